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
        var problem = ContentsText.Parse(typed, Ours, "contains").Problems[0];
        Assert.Equal(code, problem.Code);
        Assert.Equal("contains", problem.Where);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ethanol=30-60,methanol=30-60", 40, 60)]
    [InlineData("ethanol=30–60 %;methanol=30..60%", 40, 60)]
    [InlineData("ethanol=rest,methanol=<3,water=5", 0, 3)]
    [InlineData("ethanol=10 to 20,methanol=>=50,unknown=rest", 50, 90)]
    [InlineData("ethanol=95,methanol=rest", 5, 5)]
    public void Ranges_are_read_as_data_sheets_print_them(string typed, int least, int most)
    {
        var possible = ContentsText.Possible(typed, Ours).Require();
        Assert.Equal((least, most), ((int)possible.Min(c => c.PercentOf("methanol")), (int)possible.Max(c => c.PercentOf("methanol"))));
        Assert.All(possible, c => Assert.Equal(100m, c.Ingredients.Sum(i => i.Percent), 20));
    }

    [Theory]
    [InlineData("ethanol=60-30,water=rest", "JL151")]
    [InlineData("ethanol=30-40,water=5-10", "JL153")]
    [InlineData("ethanol=rest,methanol=<9,butanone=<9,acetone=<9,propan-2-ol=<9,1-butanol=<9,water=<9", "JL222")]
    public void Ranges_that_cannot_be_are_told(string typed, string code) => Assert.Equal(code, Assert.Single(ContentsText.Possible(typed, Ours, "contains").Problems).Code);

    [Fact]
    public void One_composition_takes_no_range() => Assert.Equal("JL151", Assert.Single(ContentsText.Parse("ethanol=30-60,water=rest", Ours).Problems).Code);

    [Fact]
    public void All_faults_are_told_at_once() =>
        Assert.Equal(2, ContentsText.Parse("beer=5,water=x", Ours).Problems.Count);
}
