namespace JarLabel.Tests.Web;

/// <summary>What is filled in of a jar, bag or bottle that was worked on meanwhile is not recorded without a word, also where the form is of none of
/// them until it is filled in.</summary>
public sealed class MeanwhileTests : IDisposable
{
    private readonly WebShop shop = new();

    public MeanwhileTests()
    {
        shop.Mix("350 mL");
        shop.Stock("500 g", "1 L");
    }

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_blend_of_a_jar_that_was_drawn_from_is_told_and_keeps_what_was_typed()
    {
        (string, string)[] blend = [("jar", "1; 2=100 mL"), ("job", "viola"), ("do", "record")];
        var form = WebShop.Hidden((await shop.Get("/blend")).Text);
        Assert.Equal(303, (await shop.Fill("/J/1-9/use", ("volume", "200 mL"), ("do", "record"))).Status);
        var told = await shop.Post("/blend", [.. form, .. blend]);
        Assert.Equal(409, told.Status);
        Assert.All(["JL150", "Jar 1-9 has been worked on since this was opened", "It holds 202 mL (", "Nothing was recorded"], part => Assert.Contains(part, told.Seen, StringComparison.Ordinal));
        Assert.All(["value=\"1; 2=100 mL\"", "value=\"viola\""], part => Assert.Contains(part, told.Text, StringComparison.Ordinal));
        Assert.Equal(2, shop.Jars());
        Assert.Equal(303, (await shop.Post("/blend", [.. WebShop.Hidden(told.Text), .. blend])).Status);
        Assert.Equal("Blended", shop.Jar(3).Events[0].Event.Name);
    }

    /// <summary>What happened to another jar, and a label, change nothing of it.</summary>
    [Fact]
    public async Task A_blend_is_recorded_where_something_else_was_worked_on()
    {
        shop.Mix("350 mL");
        var form = WebShop.Hidden((await shop.Get("/blend")).Text);
        Assert.Equal(303, (await shop.Fill("/J/3-5/use", ("volume", "200 mL"), ("do", "record"))).Status);
        Assert.Equal(303, (await shop.Fill("/J/2-7/label", ("do", "record"))).Status);
        Assert.Equal(303, (await shop.Post("/blend", [.. form, ("jar", "1; 2=100 mL"), ("do", "record")])).Status);
    }

    [Theory]
    [InlineData("bag", "weight", "400 g", "300 g")]
    [InlineData("bottle", "volume", "800 mL", "700 mL")]
    public async Task The_step_of_another_window_is_not_taken_back_unseen(string kind, string field, string left, string other)
    {
        Assert.Equal(303, (await shop.Fill($"/{kind}/left", (kind, "1-9"), (field, left), ("do", "record"))).Status);
        var form = WebShop.Hidden((await shop.Get($"/{kind}/undo?{kind}=1-9")).Text);
        Assert.Equal(303, (await shop.Fill($"/{kind}/left", (kind, "1-9"), (field, other), ("do", "record"))).Status);
        var told = await shop.Post($"/{kind}/undo", [.. form, (kind, "1-9"), ("do", "record")]);
        Assert.Equal(409, told.Status);
        Assert.All(["JL150", "1-9 has been worked on since this was opened", $"({other})", "what was measured"], part => Assert.Contains(part, told.Seen, StringComparison.Ordinal));
        Assert.Contains("<option value=\"1-9\" selected>", told.Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Post($"/{kind}/undo", [.. WebShop.Hidden(told.Text), (kind, "1-9"), ("do", "record")])).Status);
        Assert.Contains(left, (await shop.Get($"/scan?what={kind}%201")).Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bag", "weight", "400 g")]
    [InlineData("bottle", "volume", "800 mL")]
    public async Task What_was_measured_before_something_was_drawn_is_not_taken_for_what_is_left(string kind, string field, string left)
    {
        var form = WebShop.Hidden((await shop.Get($"/{kind}/left?{kind}=1-9")).Text);
        Assert.Equal(303, (await shop.Fill("/mix", ("bag", "1-9"), ("bottle", "1-9"), ("cut", "1.5"), ("pour", "350 mL"), ("do", "record"))).Status);
        var told = await shop.Post($"/{kind}/left", [.. form, (kind, "1-9"), (field, left), ("do", "record")]);
        Assert.Equal(409, told.Status);
        Assert.All(["JL150", "what jar 3-5 took"], part => Assert.Contains(part, told.Seen, StringComparison.Ordinal));
        Assert.Contains($"value=\"{left.Split(' ')[0]}\"", told.Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Post($"/{kind}/left", [.. WebShop.Hidden(told.Text), (kind, "1-9"), (field, left), ("do", "record")])).Status);
    }
}
