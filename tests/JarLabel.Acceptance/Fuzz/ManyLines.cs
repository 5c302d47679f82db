namespace JarLabel.Acceptance.Fuzz;

/// <summary>Gives the program thousands of command lines within a process or two, and demands of each that it ends, and never with a fault of
/// ours.</summary>
internal static class ManyLines
{
    private const int OurFault = 3;
    private const int Hands = 2;

    /// <summary>The longest that nothing may end: a hang, not a slow machine.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Runs the cases, each some command lines of which the others are run when the first one went well. Gives their exit codes.</summary>
    /// <param name="folder">A folder to work in.</param>
    /// <param name="cases">The cases.</param>
    internal static IReadOnlyList<int[]> Run(string folder, IReadOnlyList<string[][]> cases)
    {
        var share = (cases.Count + Hands - 1) / Hands;
        var hands = cases.Chunk(Math.Max(1, share)).Select((part, hand) => Task.Run(() => One(Path.Combine(folder, $"hand-{hand}"), part))).ToArray();
        return [.. hands.SelectMany(hand => hand.GetAwaiter().GetResult())];
    }

    private static int[][] One(string folder, string[][][] cases)
    {
        var (asked, told) = (Path.Combine(folder, "cases"), Path.Combine(folder, "answers"));
        Directory.CreateDirectory(Path.Combine(folder, "work"));
        File.WriteAllLines(asked, cases.Select(Json));
        File.WriteAllText(told, "");
        using var hand = Process.Start(new ProcessStartInfo("dotnet", ["exec", "--runtimeconfig", Path.ChangeExtension(Program, ".runtimeconfig.json"), Hand, "lines", Program, asked, told])
        {
            WorkingDirectory = Path.Combine(folder, "work"),
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        hand.StandardInput.Close();
        var output = hand.StandardOutput.BaseStream.CopyToAsync(Stream.Null);
        var errors = hand.StandardError.ReadToEndAsync();
        var hung = !Ends(hand, told);
        Task.WaitAll(output, errors);
        var answers = File.ReadAllLines(told).Select(line => line.Split(' ')[2..].Select(code => int.Parse(code, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        Assert.True(!hung && answers.Length == cases.Length && !answers.Any(codes => codes.Contains(OurFault)), $"{(hung ? "It hangs." : "")}\n{Faults(errors.Result)}");
        return answers;
    }

    private static bool Ends(Process hand, string told)
    {
        var (last, since) = (-1L, Stopwatch.GetTimestamp());
        while (!hand.WaitForExit(500))
        {
            var length = new FileInfo(told).Length;
            since = length == last ? since : Stopwatch.GetTimestamp();
            last = length;
            if (Stopwatch.GetElapsedTime(since) > Patience)
            {
                hand.Kill(entireProcessTree: true);
                return false;
            }
        }

        return true;
    }

    /// <summary>The lines that ended with a fault of ours, each with what was said, and the last one, in which the process may have ended.</summary>
    private static string Faults(string errors)
    {
        var said = errors.Split("## ");
        var faults = said.Where(one => one.Contains("This is a fault in jarlabel", StringComparison.Ordinal)).Take(20);
        return string.Join("\n", faults.Append(said[^1]).Select(one => one.Length > 2500 ? one[..2500] : one));
    }

    private static string Json(string[][] lines)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartArray();
            foreach (var line in lines)
            {
                json.WriteStartArray();
                foreach (var word in line)
                {
                    json.WriteStringValue(word);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        return System.Text.Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static string Hand { get; } = Path.Combine(Place.Root, "tests", "JarLabel.Hand", "bin", Place.Configuration, "net10.0", "JarLabel.Hand.dll");

    /// <summary>The program as an assembly, also where the native one is under test.</summary>
    private static string Program { get; } = Path.Combine(Place.Root, "src", "JarLabel.Cli", "bin", Place.Configuration, "net10.0", "jarlabel.dll");
}
