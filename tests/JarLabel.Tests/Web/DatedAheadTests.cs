namespace JarLabel.Tests.Web;

/// <summary>After a slip of the day, what is said can be followed: the past is refused, so the slip is taken back.</summary>
public sealed class DatedAheadTests : IDisposable
{
    private const string SetClock = "Set the clock right, or say when it was";

    private readonly WebShop shop = new();

    public DatedAheadTests() => shop.Stock("500 g", "1 L");

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_step_of_a_jar_that_is_dated_ahead_is_taken_back_as_the_next_one_says()
    {
        Assert.Equal(303, (await shop.Fill("/J/1-9/use", ("volume", "20 mL"), ("at", "2027-03-01"), ("do", "record"))).Status);
        var next = await shop.Get((await shop.Fill("/J/1-9/note", ("text", "strained"), ("do", "record"))).Location!);
        Assert.All(["JL374", "The clock says 9 Mar 2026", "that step is dated ahead", "“Undo”"], part => Assert.Contains(part, next.Seen, StringComparison.Ordinal));
        Assert.DoesNotContain(SetClock, next.Seen, StringComparison.Ordinal);
        Assert.Contains("href=\"/J/1-9/undo\"", next.Text, StringComparison.Ordinal);

        var note = await Done("/J/1-9/undo");
        Assert.Contains("JL374", note.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("JL374", (await Done("/J/1-9/undo")).Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("JL374", (await Done("/J/1-9/note", ("text", "strained"))).Seen, StringComparison.Ordinal);
        Assert.Equal(shop.Now, shop.Jar(1).Events[^1].Event.At);
    }

    [Theory]
    [InlineData("bag", "weight", "400 g", "300 g")]
    [InlineData("bottle", "volume", "800 mL", "700 mL")]
    public async Task So_it_is_at_a_bag_and_a_bottle(string kind, string field, string left, string other)
    {
        await Done($"/{kind}/left", (kind, "1-9"), (field, left), ("at", "2027-03-01"));
        var next = await Done($"/{kind}/left", (kind, "1-9"), (field, other));
        Assert.All(["JL374", $"the last step of {kind} 1-9", "that step is dated ahead", $"“Undo at a {kind}”"], part => Assert.Contains(part, next.Seen, StringComparison.Ordinal));
        Assert.Contains($"href=\"/{kind}/undo?{kind}=1\"", next.Text, StringComparison.Ordinal);
        Assert.Contains("JL374", (await Done($"/{kind}/undo", (kind, "1-9"))).Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("JL374", (await Done($"/{kind}/undo", (kind, "1-9"))).Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("JL374", (await Done($"/{kind}/left", (kind, "1-9"), (field, other))).Seen, StringComparison.Ordinal);
    }

    /// <summary>What a jar took from a bottle is taken back at the jar.</summary>
    [Fact]
    public async Task A_bottle_that_a_jar_took_from_ahead_leads_to_that_jar()
    {
        await Done("/mix", ("grade", "garnet"), ("bottle", "1-9"), ("cut", "1.5"), ("pour", "350 mL"), ("at", "2027-03-01"));
        var next = await Done("/bottle/left", ("bottle", "1-9"), ("volume", "600 mL"));
        Assert.Contains("JL374", next.Seen, StringComparison.Ordinal);
        Assert.Contains("href=\"/J/2-7/undo\"", next.Text, StringComparison.Ordinal);
        var early = await shop.Fill("/bottle/left", ("bottle", "1-9"), ("volume", "500 mL"), ("at", "2026-03-09"), ("do", "record"));
        Assert.All(["JL375", "take that step back first"], part => Assert.Contains(part, early.Seen, StringComparison.Ordinal));
    }

    /// <summary>A clock that was set back by an hour is another matter: then the clock is wrong.</summary>
    [Fact]
    public async Task A_clock_that_is_behind_by_hours_is_to_be_set_right()
    {
        await Done("/J/1-9/use", ("volume", "20 mL"), ("at", "2026-03-09 14:30"));
        Assert.Contains(SetClock, (await Done("/J/1-9/note", ("text", "strained"))).Seen, StringComparison.Ordinal);
    }

    private async Task<Page> Done(string form, params (string, string)[] fields) => await shop.Get((await shop.Fill(form, [.. fields, ("do", "record")])).Location!);
}
