namespace JarLabel.Acceptance.Fuzz;

/// <summary>Exports that are sealed well and say what nobody can have recorded. Either they are refused whole, or everything works with them: no command
/// ends with a fault of ours, and none hangs. JARLABEL_FUZZ=all tries every member of every kind of event; JARLABEL_SEED=N chooses others.</summary>
public sealed class ImportFuzzTests : IDisposable
{
    private const int Usual = 250;

    /// <summary>It has no seal, and a head with it is told as no text before.</summary>
    private const string HalfCharacter = "\\ud800";
    private readonly string folder = Directory.CreateTempSubdirectory("jarlabel-fuzz-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_is_sealed_anew_with_extremes_is_refused_or_harmless()
    {
        var export = Export();
        var all = Cases(export).ToArray();
        var random = new Random(int.Parse(Environment.GetEnvironmentVariable("JARLABEL_SEED") ?? "20261128", CultureInfo.InvariantCulture));
        random.Shuffle(all);
        var chosen = Environment.GetEnvironmentVariable("JARLABEL_FUZZ") == "all" ? all : all[..Usual];
        var codes = ManyLines.Run(folder, [.. chosen.Select((lines, i) => Written(lines, i)), Written(export, chosen.Length)]);

        Assert.All(codes, each => Assert.All(each, code => Assert.True(code is 0 or 2)));
        Assert.True(codes.Count(each => each[0] == 2) > chosen.Length / 2, "Most of it can never have been recorded.");
        Assert.Equal(0, codes[^1][0]);
    }

    /// <summary>The seals are made here as the program makes them: what nobody changed is taken.</summary>
    [Fact]
    public void An_export_that_is_sealed_anew_unchanged_is_the_same_file()
    {
        var export = Export();
        Assert.Equal(export, Resealed.Of(export));
        Assert.True(export.Skip(1).Select(KindOf).Distinct().Count() >= 26, string.Join(' ', export.Skip(1).Select(KindOf).Distinct()));
    }

    private string[][] Written(string[] lines, int number)
    {
        var (file, shop) = (Path.Combine(folder, $"{number}.jsonl"), Path.Combine(folder, $"shop-{number}"));
        File.WriteAllLines(file, lines);
        Directory.CreateDirectory(shop);
        return [.. new[] { $"import {file}", "shelf", "jar 1", "jar 2", "verify", "label --all --dry-run", "card 1 --dry-run", "bag list", "bottle list", "sheet state", "keeping", "notice --dry-run",
            "plan --for pad --area 1m2 --coats 1 --grade garnet --solvent ethanol-95", "thin 1 --to 0.5 --no-label", "thicken 1 --to 3 --no-label", "use 2 10mL", "undo 1 --no-label",
            "mix --grade garnet --solvent ethanol-95 --cut 2 --pour 100mL", "label --bag 1 --dry-run", "shelf --ics shelf.ics --dry-run", "verify" }.Select(line => (string[])[.. line.Split(' '), "--shop", shop])];
    }

    /// <summary>One event of each kind, each of its members and of its head at an extreme, and everything behind it as it was.</summary>
    private static IEnumerable<string[]> Cases(string[] export)
    {
        foreach (var at in Enumerable.Range(1, export.Length - 1).DistinctBy(i => KindOf(export[i])))
        {
            foreach (var body in Extremes.Of(Resealed.BodyOf(export[at])))
            {
                yield return Changed(export, at, Resealed.With(export[at], body));
            }

            var head = JsonNode.Parse(export[at])!.AsObject();
            head.Remove("seal");
            head.Remove("body");
            foreach (var changed in Extremes.Of(head.ToJsonString()).Where(text => !text.Contains(HalfCharacter, StringComparison.Ordinal)).Select(text => JsonNode.Parse(text)!.AsObject()).Where(Whole))
            {
                yield return Changed(export, at, $"{changed.ToJsonString()[..^1]},\"body\":{Resealed.BodyOf(export[at])},\"seal\":\"\"}}");
            }
        }
    }

    private static bool Whole(JsonObject head) => ((string[])["subject", "number", "at", "kind", "revision"]).All(member => head[member] is not null);

    private static string[] Changed(string[] export, int at, string line)
    {
        string[] lines = [.. export];
        lines[at] = line;
        return Resealed.Of(lines);
    }

    private static string KindOf(string line) => JsonNode.Parse(line)!["subject"]!.GetValue<string>() + JsonNode.Parse(line)!["kind"]!.GetValue<string>();

    private string[] Export()
    {
        var (shop, file) = (Path.Combine(folder, "first"), Path.Combine(folder, "first.jsonl"));
        string[] steps =
        [
            "bag add --grade garnet --mass 500g --date 2025-10-01 --note lot~7 --no-label", "bottle add --solvent ethanol-95 --volume 2L --date 2026-01-01 --material metal --note new --no-label",
            "shop set shelf attic=30C", "mix --grade garnet --solvent ethanol-95 --cut 2 --pour 300mL --container 500mL --bag 1 --bottle 1 --by Ann --job viola~top --note strained --temp 20C",
            "mix --grade blonde --solvent ethanol-95 --cut 1 --pour 300mL --flake-date 2025-11-03 --no-label", "thin 1 --to 1.5 --bottle 1 --no-label", "thicken 1 --to 1.75 --bag 1 --no-label",
            "thin 2 --to 0.9 --container 1L --no-label", "decant 1 --into 50mL --no-label", "blend 1=20mL 2=20mL --no-label", "use 2 10mL --job scroll", "test 1 pass --dry-minutes 30",
            "move 2 --shelf attic --no-label", "note 1 swirled", "undo 1 --no-label", "note 2 looks~good", "discard 4 --why cloudy", "bag left 1 400g", "bottle left 1 1L", "bottle move 1 --shelf attic",
            "label 2 --copies 2", "label --bag 1", "sheet new letter-2x5-101.6x50.8", "sheet back 1 1", "thin 2 --to 0.8 --bottle 1 --no-label", "undo 2 --no-label", "bag discard 1 --why empty",
        ];
        string[][] lines = [.. steps.Select(step => (string[])[.. step.Split(' ').Select(word => word.Replace('~', ' ')), "--at", "2026-03-09T14:30", "--shop", shop]), ["export", file, "--shop", shop]];
        var codes = Assert.Single(ManyLines.Run(folder, [[["shop", "init", "--shop", shop], .. lines]]));
        Assert.All(codes, code => Assert.Equal(0, code));
        return WithRedated(File.ReadAllLines(file));
    }

    /// <summary>What the shop's tests alone bring about is written here.</summary>
    private static string[] WithRedated(string[] export)
    {
        var jar = export.Skip(1).Last(line => KindOf(line) == "jarTested");
        var dates = JsonNode.Parse(Resealed.BodyOf(export.Skip(1).First(line => KindOf(line) == "jarMixed")))!["dates"]!.ToJsonString();
        var line = JsonNode.Parse(jar)!.AsObject();
        var redated = $$$"""{"sequence":0,"subject":"jar","number":1,"at":"2026-03-09T14:30:00","kind":"Redated","revision":{{{line["revision"]!.GetValue<int>() + 1}}},"body":{"event":"Redated","dates":{{{dates}}},"at":"2026-03-09T14:30:00"},"seal":""}""";
        return Resealed.Of([.. export, redated]);
    }
}
