namespace JarLabel.Acceptance;

public sealed class NoticeTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void A_notice_tells_what_stands_on_the_shelf()
    {
        Mix("ethanol-95");
        Mix("denatured-sda3a");
        var notice = shop.Json("notice", "--paper", "a4", "--at", "2026-03-09")["notice"]!.AsObject();
        Assert.Equal((2, "Danger", true), (notice["jars"]!.GetValue<int>(), notice["signalWord"]!.GetValue<string>(), notice["toxic"]!.GetValue<bool>()));
        using var pdf = PdfDocument.Open(notice["file"]!.GetValue<string>());
        var page = Assert.Single(pdf.GetPages());
        Assert.Equal((841.89, 595.28), (page.Width, page.Height), new WithinPoint());
        var words = string.Join(' ', page.GetWords().Select(w => w.Text));
        foreach (var part in (string[])["DANGER", "Air", "outside.", "9 Mar 2026", "poison center", "1910.106", "1926.152", "ppm", "fire code"])
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }

        OutsideProgram.Qpdf.Run("--check", notice["file"]!.GetValue<string>());
    }

    [Fact]
    public void Bottles_that_stand_there_are_not_called_jars()
    {
        Mix("ethanol-95");
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-03-01", "--no-label");
        var notice = shop.Json("notice", "--at", "2026-03-09")["notice"]!;
        Assert.Equal((1, 1), (notice["jars"]!.GetValue<int>(), notice["bottles"]!.GetValue<int>()));
        Assert.Contains("1 jar, 1 bottle, ", shop.Run("notice", "--at", "2026-03-09").Result, StringComparison.Ordinal);
    }

    // The fullest notice there is: every kind of alcohol, every limit passed, a long name at the foot.
    [Fact]
    public void The_fullest_shelf_finds_room_on_both_papers_under_both_rules()
    {
        foreach (var solvent in (string[])["ethanol-95", "denatured-sda3a", "denatured-unknown", "methanol", "isopropanol-99"])
        {
            Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "1", "--pour", "200 L", "--solvent", solvent, "--no-label").ExitCode);
        }

        Assert.Equal(0, shop.Run("shop", "set", "name", "Larkwood Finishing Room in the Old Sawmill, Upper Court").ExitCode);
        foreach (var paper in (string[])["a4", "letter"])
        {
            foreach (var (rules, units) in ((string, string)[])[("osha", "us"), ("osha", "metric"), ("clp", "metric")])
            {
                var notice = shop.Json("notice", "--paper", paper, "--rules", rules, "--units", units, "--out", $"{paper}-{rules}-{units}.pdf")["notice"]!;
                Assert.True(File.Exists(notice["file"]!.GetValue<string>()));
            }
        }
    }

    // 250 mL in 2 m3 hold about 4.9 % of vapour, and 3.3 % burn; in 10 m3 it is 30 % of that.
    [Theory]
    [InlineData("2 m3", "CAN BURN")]
    [InlineData("10 m3", "too much")]
    public void Air_that_fire_rules_do_not_allow_is_marked_on_the_notice_and_told(string room, string mark)
    {
        foreach (var paper in (string[])["a4", "letter"])
        {
            var answer = shop.Json("notice", "--room", room, "--paper", paper);
            Assert.Contains(answer["warnings"]!.AsArray(), w => w!["code"]!.GetValue<string>() == "JL160");
            using var pdf = PdfDocument.Open(answer["notice"]!["file"]!.GetValue<string>());
            Assert.Contains(mark, string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("--shelf", "", "JL409")]
    [InlineData("--shelf", "attic", "JL409")]
    [InlineData("--room", "0 m3", "JL105")]
    [InlineData("--room", "50", "JL10")]
    [InlineData("--paper", "a3", "JL108")]
    [InlineData("--room", "1 fl oz", "JL105")]
    [InlineData("--distance", "5", "JL323")]
    [InlineData("--out", "notice.doc", "JL332")]
    public void A_wrong_word_is_told_and_nothing_is_written(string option, string value, string code)
    {
        var run = shop.Run("notice", option, value);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}", run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(shop.Labels) && Directory.EnumerateFiles(shop.Labels).Any());
    }

    [Fact]
    public void A_fault_of_what_is_read_at_two_places_is_told_once() =>
        Assert.Equal(1, shop.Run("notice", "--paper", "").Errors.Split('\n').Count(line => line.StartsWith("error ", StringComparison.Ordinal)));

    [Fact]
    public void A_dry_run_writes_nothing()
    {
        Assert.Equal(0, shop.Run("notice", "--dry-run").ExitCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(shop.Folder));
    }

    // 20 kg of alcohols (TRGS 510) are less than 30 L of 95 % ethanol at 0.8114 kg/L.
    [Fact]
    public void A_passed_limit_is_a_caution_and_stands_on_the_notice()
    {
        Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "1", "--pour", "30 L", "--solvent", "ethanol-95", "--no-label").ExitCode);
        var answer = shop.Json("notice", "--rules", "clp");
        Assert.Contains("de-workroom", answer["notice"]!["limitsPassed"]!.AsArray().Select(l => l!.GetValue<string>()));
        Assert.Contains(answer["warnings"]!.AsArray(), w => w!["code"]!.GetValue<string>() == "JL177");
    }

    // The same limit, told when the jar is mixed and when the shelf is looked at; 24 L weigh 19.5 kg.
    [Theory]
    [InlineData("24 L", false)]
    [InlineData("26 L", true)]
    public void Mixing_and_looking_at_the_shelf_tell_a_passed_limit(string pour, bool passed)
    {
        string[] mix = ["mix", "--grade", "garnet", "--cut", "0.1", "--pour", pour, "--solvent", "ethanol-95", "--no-label", "--rules", "clp"];
        Assert.Equal(passed, Passed(shop.Json([.. mix, "--dry-run"])));
        Assert.Equal(passed, Passed(shop.Json(mix)));
        Assert.Equal(passed, Passed(shop.Json("shelf", "--rules", "clp")));
        Assert.False(Passed(shop.Json("shelf", "--rules", "osha")));
    }

    /// <summary>14 L of butan-1-ol, which flashes at 35 °C and counts nothing, poured to 12 L of ethanol, which counts, light as easily as the ethanol: 21 kg.</summary>
    [Fact]
    public void A_blend_counts_as_the_most_easily_lit_of_its_alcohols_whatever_most_of_it_is()
    {
        shop.Json("shop", "set", "rules", "clp");
        shop.Json("can", "add", "butyl can", "--contains", "1-butanol=100");
        foreach (var (pour, solvent) in ((string, string)[])[("12 L", "ethanol-95"), ("14 L", "butyl-can")])
        {
            shop.Json("mix", "--grade", "garnet", "--cut", "0.1", "--pour", pour, "--solvent", solvent, "--no-label");
        }

        Assert.False(Passed(shop.Json("shelf")));
        Assert.True(Passed(shop.Json("blend", "1", "2", "--no-label")));
        Assert.True(Passed(shop.Json("shelf")));
        Assert.True(Passed(shop.Json("notice")));
    }

    private static bool Passed(JsonObject answer) => answer["warnings"]!.AsArray().Any(w => w!["code"]!.GetValue<string>() == "JL177");

    private void Mix(string solvent) => Assert.Equal(
        0, shop.Run("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", solvent, "--container", "500 mL", "--at", "2026-03-09T10:00").ExitCode);

    private sealed class WithinPoint : IEqualityComparer<(double Width, double Height)>
    {
        public bool Equals((double Width, double Height) one, (double Width, double Height) other) =>
            Math.Abs(one.Width - other.Width) < 0.5 && Math.Abs(one.Height - other.Height) < 0.5;

        public int GetHashCode((double Width, double Height) size) => 0;
    }

    [Fact]
    public void A_room_that_was_given_is_not_asked_for()
    {
        using var shop = new Shop();
        Assert.Contains("when you say how large it is", shop.Run("notice").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("when you say how large it is", shop.Run("notice", "--room", "20 x 15 x 9 ft").Result, StringComparison.Ordinal);
    }
}
