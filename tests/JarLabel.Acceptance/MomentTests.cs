namespace JarLabel.Acceptance;

/// <summary>One rule for the moment of every step: not before the last one of its jar. A clock that was set back is no reason to refuse work.</summary>
public sealed class MomentTests : IDisposable
{
    private readonly Shop shop = new();

    public MomentTests()
    {
        foreach (var at in (string[])["2026-03-09T10:00", "2026-03-09T11:00"])
        {
            shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "300 mL", "--solvent", "ethanol-95", "--at", at, "--no-label");
        }

        shop.Json("use", "1", "20 mL", "--at", "2026-05-01");
    }

    public void Dispose() => shop.Dispose();

    /// <summary>Whoever mends one thing after the other is told the next each time.</summary>
    [Theory]
    [InlineData("mix --grade garnt --cut x --pour 350mL --solvent ethanol-95", "--grade", "--cut")]
    [InlineData("thin 1 --to x --solvent ethnol", "--to", "--solvent")]
    [InlineData("bag add --grade garnt --mass 5L --date 2026-01-05", "--grade", "--mass")]
    public void A_moment_that_cannot_be_read_is_told_beside_all_that_is_wrong(string line, params string[] also)
    {
        var run = shop.Run([.. line.Split(' '), "--at", "3/4/2026"]);
        Assert.Equal((2, ""), (run.ExitCode, run.Result));
        Assert.All([.. also, "--at"], option => Assert.Matches($"(?m)^error JL[0-9]+: {option}: ", run.Errors));
    }

    [Fact]
    public void A_moment_before_the_last_step_is_refused_for_every_step()
    {
        var before = shop.Json("jar", "1")["history"]!.ToJsonString();
        string[] steps = ["use 1 10mL", "undo 1", "thin 1 --to 1", "thicken 1 --to 3", "decant 1 --into 100mL", "blend 1 2", "test 1 pass", "move 1 --shelf main", "note 1 strained", "discard 1"];
        foreach (var step in steps)
        {
            var run = shop.Run([.. step.Split(' '), "--at", "2026-04-30T23:59"]);
            Assert.Equal((2, ""), (run.ExitCode, run.Result));
            Assert.StartsWith("error JL357: --at: Read 30 Apr 2026, 23:59 as the moment of this step", run.Errors, StringComparison.Ordinal);
        }

        Assert.Equal(before, shop.Json("jar", "1")["history"]!.ToJsonString());
        Assert.All(steps.SkipLast(1), step => Assert.Equal(0, shop.Run([.. step.Split(' '), "--at", "2026-05-01", "--dry-run"]).ExitCode));
    }

    /// <summary>As when the clock was wrong at the step before: the bench's own clock, today, lies long before it.</summary>
    [Theory]
    [InlineData("thin 1 --to", "1", "Thinned")]
    [InlineData("use 1", "10mL", "Used")]
    [InlineData("note 1", "strained", "Noted")]
    public void A_clock_that_was_set_back_loses_no_step_and_is_told(string line, string last, string kind)
    {
        shop.Json("use", "1", "10 mL", "--at", "2190-01-01T08:00");
        var run = shop.Run([.. line.Split(' '), last]);
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.Contains("The clock says", run.Result, StringComparison.Ordinal);
        Assert.DoesNotContain("JL357", run.Result + run.Errors, StringComparison.Ordinal);
        var recorded = shop.Json("jar", "1")["history"]!.AsArray().Last(step => step!["event"]!.GetValue<string>() == kind)!;
        Assert.Equal("2190-01-01T08:00", recorded["at"]!.GetValue<string>()[..16]);
    }

    /// <summary>A step under a wrong date is taken back, and then the clock is right again.</summary>
    [Fact]
    public void A_step_of_the_future_is_taken_back_and_the_next_one_is_of_today()
    {
        shop.Json("use", "1", "10 mL", "--at", "2190-01-01T08:00");
        Assert.Equal(0, shop.Run("undo", "1", "--no-label").ExitCode);
        var run = shop.Run("use", "1", "10 mL");
        Assert.Equal(0, run.ExitCode);
        Assert.DoesNotContain("The clock says", run.Result, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void What_a_scale_says_of_a_bag_or_bottle_keeps_to_the_same_rule()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-01", "--at", "2026-03-09", "--no-label");
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-01-01", "--at", "2026-03-09", "--no-label");
        shop.Json("shop", "set", "shelf", "cellar=14 C", "--at", "2026-03-01");
        foreach (var line in (string[][])[["bag", "left", "1", "400 g"], ["bottle", "left", "1", "400 mL"], ["bottle", "move", "1", "--shelf", "cellar"], ["bag", "discard", "1"]])
        {
            var run = shop.Run([.. line, "--at", "2026-03-08"]);
            Assert.Equal(2, run.ExitCode);
            Assert.StartsWith("error JL375: --at:", run.Errors, StringComparison.Ordinal);
            Assert.Equal(0, shop.Run([.. line, "--at", "2026-03-10"]).ExitCode);
        }

        Assert.Equal(0, shop.Run("bottle", "left", "1", "300 mL", "--at", "2190-01-01").ExitCode);
        Assert.Contains("JL374", shop.Run("bottle", "left", "1", "200 mL", "--json").Errors, StringComparison.Ordinal);
    }
}
