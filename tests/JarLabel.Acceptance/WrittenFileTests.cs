namespace JarLabel.Acceptance;

/// <summary>Every command that takes a file to write, held to one rule: nothing of the shop's own is written over, nor what is no file, nor,
/// unasked, what somebody else wrote.</summary>
public sealed class WrittenFileTests : IDisposable
{
    private const string Letter = "Dear customer, the viola is ready.";
    private readonly Shop shop = new();
    private readonly string desk = Directory.CreateTempSubdirectory("jarlabel-test-").FullName;

    public WrittenFileTests() => Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95").ExitCode);

    public static TheoryData<string> Writers { get; } =
    [
        "label 1 --out *.pdf",
        "label 1 --copies 2 --out *.pdf",
        "label --all --out *.png --copies 2",
        "card 1 --out *.svg",
        "notice --out *.pdf",
        "shelf --ics *.ics",
        "shelf --out *.png",
        "plan --for pad --area 1m2 --coats 1 --grade garnet --solvent ethanol-95 --ics *.ics",
        "plan --for pad --area 1m2 --coats 1 --grade garnet --solvent ethanol-95 --out *.pdf",
        "keeping --grade garnet --solvent ethanol-95 --out *.svg",
        "calibrate --sheet letter-2x5-101.6x50.8 --out *.pdf",
        "designs --out *.pdf",
        "calc air --solvent ethanol-95 --evaporate 250mL --room 50m3 --out *.png",
        "export *.jsonl",
        "backup *.db",
    ];

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(desk, recursive: true);
    }

    [Theory]
    [MemberData(nameof(Writers))]
    public void Somebody_elses_file_is_left_alone_until_force_is_said_and_our_own_is_written_again(string line)
    {
        var file = Path.Combine(desk, "answer" + Path.GetExtension(line.Split(' ').Single(word => word.StartsWith('*'))));
        var words = Words(line, file);
        File.WriteAllText(file, Letter);
        foreach (var dry in (string[][])[[], ["--dry-run"]])
        {
            var refused = shop.Run([.. words, .. dry]);
            Assert.Equal((2, ""), (refused.ExitCode, refused.Result));
            Assert.Matches("^error JL4(37|42): ", refused.Errors);
            Assert.Contains("--force", refused.Errors, StringComparison.Ordinal);
            Assert.Equal(Letter, File.ReadAllText(file));
        }

        Succeeds([.. words, "--force"]);
        Assert.NotEqual(Letter, File.ReadAllText(file));
        Succeeds(words);
        Assert.Equal(["answer" + Path.GetExtension(file)], Directory.EnumerateFileSystemEntries(desk).Select(Path.GetFileName));
    }

    /// <summary>By its name, through a linked folder, through a link, and, where there are such, by a second name on the disk; with --force as well.</summary>
    [Theory]
    [MemberData(nameof(Writers))]
    public void The_shops_own_files_and_what_is_no_file_are_never_written_to(string line)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "links and pipes are wanted");
        shop.Json("shop", "set", "name", "Alder Lane Lutherie");
        var before = Own();
        Command("ln", "-s", shop.Folder, Path.Combine(desk, "linked"));
        Command("ln", "-s", Path.Combine(shop.Folder, "shop.json"), Path.Combine(desk, "soft" + Ending(line)));
        Command("ln", Path.Combine(shop.Folder, "ledger.db"), Path.Combine(desk, "hard" + Ending(line)));
        Command("mkfifo", Path.Combine(desk, "pipe" + Ending(line)));
        Directory.CreateDirectory(Path.Combine(desk, "folder" + Ending(line)));
        Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog"));
        string[] places =
        [
            Path.Combine(desk, "linked", "catalog", "answer" + Ending(line)),
            .. ((string[])["soft", "hard", "pipe", "folder"]).Select(name => Path.Combine(desk, name + Ending(line))),
            .. line is "shelf --ics *.ics"
                ? ((string[])["ledger.db", "ledger.db-wal", "ledger.db-shm", "ledger.db-journal", "LEDGER.db", "shop.json", "devices.json", "certificate.pem", "calibration.json", "shop.lock", "layouts/x", "staging/x"]).Select(name => Path.Combine(shop.Folder, name)).Append("/dev/null")
                : [],
            .. line is "export *.jsonl" or "backup *.db" ? ((string[])["ledger.db", "ledger.db-wal", "shop.json"]).Select(name => Path.Combine(desk, "linked", name)) : [],
        ];
        foreach (var place in places)
        {
            var run = shop.Run([.. Words(line, place), "--force"]);
            Assert.True(run.ExitCode == 2, $"{place}: {run.Result}");
            Assert.Matches("^error JL4(35|36|41): ", run.Errors);
        }

        Assert.Equal(before, Own());
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(shop.Folder, "catalog")));
    }

    /// <summary>A link that somebody set stays a link, and what it leads to is written.</summary>
    [Theory]
    [InlineData("label 1 --out *.pdf")]
    [InlineData("shelf --out *.png")]
    [InlineData("export *.jsonl")]
    [InlineData("backup *.db")]
    public void Through_a_link_the_file_behind_it_is_written(string line)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "links are wanted");
        Directory.CreateDirectory(Path.Combine(desk, "far"));
        var (link, far) = (Path.Combine(desk, "near" + Ending(line)), Path.Combine(desk, "far", "answer" + Ending(line)));
        Command("ln", "-s", far, link);
        Succeeds(Words(line, link));
        Succeeds(Words(line, link));
        Assert.Equal(far, new FileInfo(link).LinkTarget);
        Assert.True(new FileInfo(far).Length > 0);
        File.WriteAllText(far, Letter);
        Assert.Equal(2, shop.Run(Words(line, link)).ExitCode);
        Assert.Equal(Letter, File.ReadAllText(far));
    }

    [Fact]
    public void One_kind_of_our_files_is_not_written_over_by_another()
    {
        var file = Path.Combine(desk, "events.jsonl");
        Succeeds("export", file);
        var events = File.ReadAllBytes(file);
        Assert.StartsWith("error JL437", shop.Run("shelf", "--ics", file).Errors, StringComparison.Ordinal);
        Assert.Equal(events, File.ReadAllBytes(file));
    }

    [Fact]
    public void A_label_in_the_shops_own_room_is_printed_again_though_somebody_damaged_it()
    {
        var label = Directory.GetFiles(shop.Labels).Single();
        File.WriteAllText(label, "x");
        Assert.Equal(2, shop.Run("verify").ExitCode);
        Succeeds("label", "1");
        Succeeds("verify");
    }

    [Fact]
    public void Folders_to_fill_are_none_of_the_shops_rooms_and_a_copy_follows_no_planted_link()
    {
        foreach (var command in (string[])["publish", "demo"])
        {
            var run = shop.Run(command, Path.Combine(shop.Folder, "layouts", "new"));
            Assert.Equal(2, run.ExitCode);
            Assert.StartsWith("error JL435", run.Errors, StringComparison.Ordinal);
            Assert.False(Directory.Exists(Path.Combine(shop.Folder, "layouts", "new")));
        }

        var pocket = Path.Combine(desk, "pocket");
        Succeeds("publish", pocket);
        Succeeds("publish", pocket);
        File.WriteAllText(Path.Combine(pocket, "index.html"), Letter);
        Assert.StartsWith("error JL437", shop.Run("publish", pocket).Errors, StringComparison.Ordinal);
        Assert.Equal(Letter, File.ReadAllText(Path.Combine(pocket, "index.html")));
        Succeeds("publish", pocket, "--force");
        Assert.NotEqual(Letter, File.ReadAllText(Path.Combine(pocket, "index.html")));
    }

    private static string Ending(string line) => Path.GetExtension(line.Split(' ').Single(word => word.StartsWith('*')));

    private static string[] Words(string line, string file) => [.. line.Split(' ').Select(word => word.StartsWith('*') ? file : word)];

    private void Succeeds(params string[] words)
    {
        var run = shop.Run(words);
        Assert.True(run.ExitCode == 0, $"{string.Join(' ', words)}: {run.Errors}");
    }

    private void Command(string program, params string[] words)
    {
        using var run = shop.StartUnder(program, words);
        run.WaitForExit();
        Assert.Equal(0, run.ExitCode);
    }

    /// <summary>Everything in the shop folder but its labels.</summary>
    private Dictionary<string, string> Own() => Directory.EnumerateFiles(shop.Folder, "*", SearchOption.AllDirectories)
        .Where(file => !file.StartsWith(shop.Labels, StringComparison.Ordinal))
        .ToDictionary(file => file, file => Convert.ToHexString(File.ReadAllBytes(file)), StringComparer.Ordinal);
}
