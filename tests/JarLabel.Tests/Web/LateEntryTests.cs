namespace JarLabel.Tests.Web;

/// <summary>What was done before is entered on a page as of then: the use-by of a jar and the order of what happened hang on it.</summary>
public sealed class LateEntryTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("yesterday", "2026-03-10T12:00:00")]
    [InlineData("2026-03-10 14:30", "2026-03-10T14:30:00")]
    [InlineData("", "2026-03-11T10:00:00")]
    public async Task A_step_is_recorded_at_the_moment_that_is_said(string at, string moment)
    {
        shop.Now = new DateTime(2026, 3, 11, 10, 0, 0);
        Assert.Equal(303, (await shop.Fill("/J/1-9/use", ("volume", "20 mL"), ("at", at), ("do", "record"))).Status);
        Assert.Equal(moment, shop.Jar(1).Events[^1].Event.At.ToString("s", CultureInfo.InvariantCulture));
    }

    /// <summary>Garnet keeps eight months by published claims, which are counted from the day it was mixed.</summary>
    [Fact]
    public async Task A_jar_that_was_mixed_last_week_is_dated_from_then()
    {
        shop.Now = new DateTime(2026, 3, 20, 10, 0, 0);
        var shown = await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "350 mL"), ("at", "2026-03-09"), ("do", "show"));
        Assert.Contains("9 Nov 2026", shown.Seen, StringComparison.Ordinal);
        Assert.Contains("value=\"2026-03-09\"", shown.Text, StringComparison.Ordinal);
        await shop.Fill("/mix", ("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "350 mL"), ("at", "2026-03-09"), ("do", "record"));
        Assert.Equal(new DateOnly(2026, 11, 9), shop.Jar(2).Jar.Dates.UseBy);
    }

    [Theory]
    [InlineData("3/4/2026")]
    [InlineData("soon")]
    [InlineData("2026-02-30")]
    [InlineData("2026-03-01")] // before the jar was mixed
    public async Task A_moment_that_cannot_be_is_told_and_nothing_is_recorded(string at)
    {
        var before = shop.Jar(1).Steps;
        var told = await shop.Fill("/J/1-9/use", ("volume", "20 mL"), ("at", at), ("do", "record"));
        Assert.Equal(422, told.Status);
        Assert.Contains("2026-03-09", told.Seen, StringComparison.Ordinal);
        Assert.Contains("value=\"20\"", told.Text, StringComparison.Ordinal);
        Assert.Contains($"value=\"{at}\"", told.Text, StringComparison.Ordinal);
        Assert.Equal(before, shop.Jar(1).Steps);
    }

    /// <summary>Whoever mends the moment is not told of the bag only then.</summary>
    [Fact]
    public async Task A_moment_that_cannot_be_is_told_beside_what_the_ledger_knows()
    {
        var told = await shop.Fill("/mix", ("bag", "4"), ("solvent", "ethanol-95"), ("cut", "1"), ("pour", "100 mL"), ("at", "soon"), ("do", "record"));
        Assert.Equal(422, told.Status);
        Assert.Contains("JL109", told.Text, StringComparison.Ordinal);
        Assert.Contains("JL156", told.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_form_that_records_asks_when_and_none_that_only_looks()
    {
        foreach (var path in (string[])["/mix", "/bag/add", "/blend", "/J/1-9/thin", "/J/1-9/test", "/J/1-9/note", "/J/1-9/discard", "/J/1-9/undo"])
        {
            Assert.Contains("When, if not now", (await shop.Get(path)).Text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("When, if not now", (await shop.Get("/keeping")).Text, StringComparison.Ordinal);
    }
}
