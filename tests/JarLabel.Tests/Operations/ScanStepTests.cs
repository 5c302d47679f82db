namespace JarLabel.Tests.Operations;

public sealed class ScanStepTests : IDisposable
{
    private readonly BenchShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void An_input_that_ends_before_a_code_was_typed_is_refused_with_what_to_type()
    {
        var problem = Assert.Single(ScanStep.Step.Do(shop.Open(), new Typed()).Problems);
        Assert.Equal(("JL117", "-"), (problem.Code, problem.Where));
        Assert.Contains("one a line, such as 142-5", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_codes_that_were_typed_are_looked_up() =>
        Assert.True(ScanStep.Step.Do(shop.Open(), new Typed("1-9", "2-7")).Ok);

    /// <summary>Somebody at the machine who asked for typed codes, and typed these.</summary>
    private sealed class Typed(params string[] lines) : IValueSource
    {
        public bool IsAtTheMachine => true;

        public IReadOnlyList<string> Texts(string name) => name == "what" ? ["-"] : [];

        public IReadOnlyList<string> Lines() => lines;

        public Problem Missing(Field field) => new("JL106", "missing", field.Name);
    }
}
