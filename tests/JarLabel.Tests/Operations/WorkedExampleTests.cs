namespace JarLabel.Tests.Operations;

/// <summary>What the map shows of adding a step compiles and works.</summary>
public class WorkedExampleTests
{
    [Fact]
    public void The_map_shows_the_step_that_is_compiled_here()
    {
        var map = File.ReadAllText(Path.Combine(Checkout.Root, "DEVELOPERS.md"));
        var step = File.ReadAllText(Path.Combine(Checkout.Root, "tests", "JarLabel.Tests", "Operations", "StrainStep.cs"));
        Assert.Contains(step[step.IndexOf("internal static class", StringComparison.Ordinal)..].TrimEnd(), map, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_recorded_and_refused_in_words_of_each_surface()
    {
        using var shop = new BenchShop();
        var before = shop.Recorded.Events;
        Assert.True(StrainStep.Step.Do(shop.Open(), new Filled("6 g")).Ok);
        Assert.Equal(before + 1, shop.Recorded.Events);
        var told = Assert.Single(StrainStep.Step.Do(shop.Open(), new Filled("300 g")).Problems);
        Assert.Equal(["use"], told.Text.Remedies.Select(remedy => remedy.Verb));
        Assert.DoesNotContain("--", told.Message, StringComparison.Ordinal);
    }

    private sealed class Filled(string left) : IValueSource
    {
        public IReadOnlyList<string> Texts(string name) => name switch { "jar" => ["1"], "left" => [left], _ => [] };

        public Problem Missing(Field field) => new("JL106", "missing", field.Name);
    }
}
