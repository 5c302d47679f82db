namespace JarLabel.Acceptance;

/// <summary>A shop folder of its own in a temporary place, and the program run in it as a person or a script would.</summary>
public sealed class Shop : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    public Shop() => Folder = Directory.CreateTempSubdirectory("jarlabel-test-").FullName;

    public string Folder { get; }

    public string Labels => Path.Combine(Folder, "labels");

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    /// <summary>Runs the program and waits for it.</summary>
    public Run Run(params string[] arguments)
    {
        using var process = Start(arguments);
        var result = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"jarlabel {string.Join(' ', arguments)} did not end within {Patience.TotalSeconds} s.");
        }

        return new Run(process.ExitCode, result.Result, errors.Result);
    }

    /// <summary>Runs the program with <c>--json</c>; the answer must be one JSON object and the exit code 0.</summary>
    public JsonObject Json(params string[] arguments)
    {
        var run = Run([.. arguments, "--json"]);
        Assert.True(run.ExitCode == 0, run.Errors + run.Result);
        return JsonNode.Parse(run.Result)!.AsObject();
    }

    /// <summary>Starts the program and goes on.</summary>
    public Process Start(params string[] arguments) => StartUnder(Place.Program, arguments);

    /// <summary>Starts somebody else's program, which may then run ours, and goes on.</summary>
    public Process StartUnder(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            WorkingDirectory = Folder,
        };
        start.Environment["JARLABEL_SHOP"] = Folder;
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        return Process.Start(start)!;
    }
}
