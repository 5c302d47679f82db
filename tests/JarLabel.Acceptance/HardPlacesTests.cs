namespace JarLabel.Acceptance;

/// <summary>Folders that are gone, disks that refuse, inputs that never end, terminals that vanish: told as what they are, with exit code 2,
/// and with the truth about what was recorded.</summary>
public sealed class HardPlacesTests : IDisposable
{
    private readonly Shop shop = new();

    public HardPlacesTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "a shell, pipes and limits are wanted");

    private static string[] Mix => ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95"];

    private const string MixLine = "mix --grade garnet --cut 1.5 --pour 350mL --solvent ethanol-95";

    public void Dispose()
    {
        Shell("chmod -R u+w .");
        shop.Dispose();
    }

    [Theory]
    [InlineData("export x.jsonl", "JL486")]
    [InlineData("backup x.db", "JL486")]
    [InlineData("import x.jsonl", "JL486")]
    [InlineData("plan job.json --grade garnet --solvent ethanol-95", "JL486")]
    [InlineData("shelf --out x.pdf", "JL486")]
    [InlineData("mix --list x.csv", "JL486")]
    [InlineData("publish pocket", "JL486")]
    [InlineData("demo shop", "JL486")]
    [InlineData("label --list x.csv", "JL340")]
    [InlineData("check there", "JL402")]
    [InlineData("scan x.png", "JL188")]
    [InlineData("shelf --shop there", "JL402")]
    [InlineData("shelf", null)]
    [InlineData("note 1 here", null)]
    public void The_folder_that_one_is_in_may_be_gone(string line, string? code)
    {
        shop.Json(Mix);
        var (exit, errors) = Shell($"mkdir gone; cd gone; rmdir ../gone; \"$0\" {line} > /dev/null");
        Assert.Equal(code is null ? 0 : 2, exit);
        Assert.StartsWith(code is null ? "" : $"error {code}", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("import", "JL444")]
    [InlineData("plan --grade garnet --solvent ethanol-95", "JL128")]
    [InlineData("label --list", "JL340")]
    [InlineData("mix --list", "JL340")]
    [InlineData("scan", "JL188")]
    public void A_device_a_pipe_and_a_folder_are_no_files_to_read(string line, string code)
    {
        foreach (var place in (string[])["/dev/zero", "pipe", .. line == "scan" ? [] : (string[])["."]])
        {
            var (exit, errors) = Shell($"rm -f pipe; mkfifo pipe; timeout 30 \"$0\" {line} {place}; code=$?; rm pipe; exit $code");
            Assert.Equal(2, exit);
            Assert.StartsWith($"error {code}", errors, StringComparison.Ordinal);
            Assert.Matches("This is a (device|pipe|folder)", errors);
        }
    }

    /// <summary>What the program was handed open has another program at its other end already.</summary>
    [Theory]
    [InlineData("cat list.csv | timeout 30 \"$0\" mix --list /dev/stdin", 0)]
    [InlineData("timeout 30 \"$0\" mix --list /dev/fd/3 3<<X\n$(cat list.csv)\nX\n", 0)]
    [InlineData("(sleep 1; cat list.csv) | timeout 30 \"$0\" mix --list /proc/self/fd/0", 0)]
    [InlineData("cat job.json | timeout 30 \"$0\" plan /dev/stdin --grade garnet --solvent ethanol-95", 0)]
    [InlineData("timeout 30 \"$0\" mix --list /dev/stdin < list.csv", 0)]
    [InlineData("timeout 30 \"$0\" mix --list /dev/stdin <&-", 2)]
    [InlineData("timeout 30 \"$0\" mix --list /dev/stdin < /dev/zero", 2)]
    [InlineData("timeout 30 \"$0\" mix --list /dev/fd/77", 2)]
    [InlineData("cat /dev/zero | timeout 30 \"$0\" mix --list /dev/stdin", 2)]
    [InlineData("yes garnet | timeout 30 \"$0\" mix --list /dev/stdin", 2)]
    [InlineData("cat /dev/zero | timeout 30 \"$0\" import /dev/stdin", 2)]
    [InlineData("cat /dev/zero | timeout 30 \"$0\" plan /dev/stdin --grade garnet --solvent ethanol-95", 2)]
    public void A_pipe_that_the_program_was_handed_is_read(string script, int exit)
    {
        File.WriteAllText(Path.Combine(shop.Folder, "list.csv"), "grade,cut,pour,solvent\ngarnet,1.5,350 mL,ethanol-95\n");
        File.WriteAllText(Path.Combine(shop.Folder, "job.json"), """[ { "for": "pad", "area": "1 m2", "coats": 3 } ]""");
        var (code, errors) = Shell(script);
        Assert.Equal(exit, code);
        Assert.StartsWith(exit == 0 ? "" : "error JL", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("layouts/sheets/own.json", "label 1")]
    [InlineData("layouts/labels/own.json", "label 1")]
    [InlineData("calibration.json", "label 1")]
    [InlineData("devices.json", "serve devices")]
    public void Other_files_of_the_shop_that_are_pipes_or_devices_hold_nobody_up(string file, string line)
    {
        shop.Json(Mix);
        foreach (var made in (string[])[$"mkfifo {file}", $"ln -s /dev/zero {file}", $"mkdir {file}"])
        {
            var (exit, errors) = Shell($"mkdir -p $(dirname {file}); {made}; timeout 30 \"$0\" {line}; code=$?; rm -r {file}; exit $code");
            Assert.True(exit is 0 or 2, $"{made}: {exit} {errors}");
        }
    }

    [Theory]
    [InlineData("plan '' --grade garnet --solvent ethanol-95")]
    [InlineData("plan ' ' --grade garnet --solvent ethanol-95")]
    [InlineData("mix --list ''")]
    [InlineData("label --list ''")]
    [InlineData("import ''")]
    [InlineData("scan ''")]
    public void No_name_at_all_is_told(string line)
    {
        var (exit, errors) = Shell($"\"$0\" {line}");
        Assert.Equal(2, exit);
        Assert.StartsWith("error JL", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_and_a_catalog_that_are_pipes_hold_nobody_up()
    {
        Assert.Equal(2, Shell("mkfifo shop.json; timeout 30 \"$0\" shelf").Code);
        Assert.Equal(2, Shell("rm shop.json; mkdir -p catalog; mkfifo catalog/solvents.json; timeout 30 \"$0\" shelf").Code);
    }

    /// <summary>The usual program runs in memory that the system counts as files; the native one does not.</summary>
    [Theory]
    [InlineData("mix --grade garnet --cut 1.5 --pour 350mL --solvent ethanol-95 --shop new", "JL474")]
    [InlineData("mix --grade garnet --cut 1.5 --pour 350mL --solvent ethanol-95", "JL474")]
    [InlineData("note 1 strained", "JL474", 16)]
    [InlineData("thin 1 --to 1", "JL474", 1)]
    [InlineData("label 1", "JL474", 0)]
    [InlineData("shelf --out x.png", "JL339")]
    [InlineData("designs --out x.png", "JL416")]
    [InlineData("backup x.db", "JL440")]
    [InlineData("shop set name x", "JL406", 0)]
    public void A_limit_to_the_size_of_files_is_told(string line, string code, int small = 80)
    {
        shop.Json(Mix);
        var (exit, errors) = Shell($"export DOTNET_EnableWriteXorExecute=0; ulimit -f {small}; \"$0\" {line} | cat");
        Assert.StartsWith($"error {code}", errors, StringComparison.Ordinal);
        Assert.Contains("ulimit -f", errors, StringComparison.Ordinal);
        Assert.Equal(0, exit);
        Assert.Empty(Directory.EnumerateFiles(shop.Folder, "*.part", new EnumerationOptions { AttributesToSkip = 0 }));
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void A_rehearsal_needs_no_folder_for_passing_files()
    {
        var (exit, errors) = Shell($"TMPDIR=/no/such/folder \"$0\" {MixLine} --dry-run > /dev/null");
        Assert.Equal((0, ""), (exit, errors));
        Assert.False(File.Exists(Path.Combine(shop.Folder, "ledger.db")));
    }

    [Fact]
    public void A_shop_that_nobody_may_write_in_and_that_has_no_ledger_is_told()
    {
        Assert.SkipUnless(Environment.UserName == "root", "only root can become somebody else");
        var (exit, errors) = Shell($"mkdir -p s/labels s/catalog s/layouts; chmod -R 755 .; setpriv --reuid 65534 --regid 65534 --clear-groups \"$0\" --shop \"$PWD/s\" {MixLine}");
        Assert.Equal(2, exit);
        Assert.StartsWith("error JL403", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MixLine, 2)]
    [InlineData("shop set name x", 2)]
    [InlineData("shelf", 2)]
    [InlineData("verify", 2)]
    [InlineData(MixLine + " --dry-run", 0)]
    public void A_shop_whose_name_is_as_long_as_a_system_takes_is_told(string line, int exit)
    {
        var path = shop.Folder + string.Concat(Enumerable.Repeat("/" + new string('a', 200), (4080 - shop.Folder.Length - 202) / 201));
        path += "/" + new string('b', 4080 - path.Length - 1);
        var run = shop.Run([.. line.Split(' '), "--shop", path]);
        Assert.Equal(exit, run.ExitCode);
        Assert.DoesNotContain("fault in jarlabel", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"$0\" note 1 strained >&-", "This is recorded all the same: jar 1.")]
    [InlineData("\"$0\" shop set name x >&-", "This is recorded all the same: the shop's settings.")]
    [InlineData("\"$0\" export x.jsonl >&-", "This is recorded all the same: the file ")]
    [InlineData("\"$0\" jar 1 >&-", "Nothing was recorded.")]
    [InlineData("\"$0\" note 9 x --json >&-", "Nothing was recorded.")]
    [InlineData("\"$0\" note 1 strained > /dev/full", "This is recorded all the same: jar 1.")]
    [InlineData("\"$0\" mix --grade garnit --cut 1 --pour 1L --solvent ethanol-95 --json > /dev/full", "Nothing was recorded.")]
    public void What_was_recorded_is_said_from_what_was_recorded(string script, string says)
    {
        shop.Json(Mix);
        var (exit, errors) = Shell(script);
        Assert.Equal(2, exit);
        Assert.StartsWith("error JL183", errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Closed_streams_lead_no_answer_into_a_file_of_the_shop()
    {
        Assert.Equal((2, ""), Shell($"\"$0\" {MixLine} >&- 2>&- <&-"));
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>The program waits for the lock while its terminal goes, records, and then has nobody to tell.</summary>
    [Fact]
    public void A_terminal_that_vanishes_is_no_fault_of_ours_and_what_was_done_stays_done()
    {
        shop.Json("shop", "init");
        var (code, errors) = (Path.Combine(shop.Folder, "code"), Path.Combine(shop.Folder, "errors"));
        using (new FileStream(Path.Combine(shop.Folder, "shop.lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            using var terminal = shop.StartUnder("script", "-qec", $"trap '' HUP; touch begun; '{Place.Program}' shop set name Alder 2> '{errors}'; echo $? > '{code}.new'; mv '{code}.new' '{code}'", "/dev/null");
            Await(Path.Combine(shop.Folder, "begun"));
            Thread.Sleep(TimeSpan.FromSeconds(2));
            terminal.Kill();
        }

        Await(code);
        Assert.Equal("2", File.ReadAllText(code).Trim());
        Assert.StartsWith("error JL183", File.ReadAllText(errors), StringComparison.Ordinal);
        Assert.Contains("This is recorded all the same: the shop's settings.", File.ReadAllText(errors), StringComparison.Ordinal);
        Assert.Equal("Alder", shop.Json("shop", "show")["name"]!.GetValue<string>());
    }

    private static void Await(string file)
    {
        for (var turns = 0; !File.Exists(file); turns++)
        {
            Assert.True(turns < 600, $"{file} never came.");
            Thread.Sleep(100);
        }
    }

    private (int Code, string Errors) Shell(string script)
    {
        using var shell = shop.StartUnder("sh", "-c", script, Place.Program);
        shell.StandardInput.Close();
        var errors = shell.StandardError.ReadToEndAsync();
        shell.StandardOutput.ReadToEnd();
        shell.WaitForExit();
        return (shell.ExitCode, errors.Result);
    }
}
