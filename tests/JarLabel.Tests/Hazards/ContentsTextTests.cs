using JarLabel.Core.Hazards;
using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class ContentsTextTests
{
    [Theory]
    [InlineData("ethanol=90,methanol=5,water=5")]
    [InlineData(" Methanol = 5 % ; water=5; ethyl alcohol=90 ")]
    public void Shares_are_read_in_any_order_and_by_other_names(string typed)
    {
        var mixture = ContentsText.Parse(typed, Ours).Require();
        Assert.Equal(90m, mixture.PercentOf("ethanol"));
        Assert.Equal(5m, mixture.PercentOf("methanol"));
    }

    [Fact]
    public void Percentages_are_kept_exactly_even_where_rounding_missed_a_hundred() =>
        Assert.Equal(5.0m, ContentsText.Parse("ethanol=90.01,methanol=5.0,water=5", Ours).Require().PercentOf("methanol"));

    [Theory]
    [InlineData("ethanol=90,water=5", "JL153", "add up to 95, which is 5 too little")]
    [InlineData("ethanol=90,water=15", "JL153", "add up to 105, which is 5 too much")]
    [InlineData("ethanol=-90,water=190", "JL151", "0 to 100")]
    [InlineData("ethanol", "JL151", "ethanol=90")]
    [InlineData("", "JL151", "ethanol=90")]
    [InlineData("ethanol=1e2", "JL151", "0 to 100")]
    [InlineData("ethanol=50,ethyl alcohol=50", "JL152", "more than once")]
    [InlineData("ethanoll=100", "JL201", "Did you mean \"ethanol\"?")]
    public void What_cannot_be_meant_is_refused_with_an_example(string typed, string code, string says)
    {
        var problem = ContentsText.Parse(typed, Ours, "--contents").Problems[0];
        Assert.Equal(code, problem.Code);
        Assert.Equal("--contents", problem.Where);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_told_at_once() =>
        Assert.Equal(2, ContentsText.Parse("beer=5,water=x", Ours).Problems.Count);
}
