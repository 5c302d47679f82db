using JarLabel.Operations.Typing;

namespace JarLabel.Tests.Operations;

/// <summary>The small words that people type, whatever the surface.</summary>
public class TypedWordsTests
{
    private static readonly DateTime Now = new(2026, 3, 9, 10, 15, 0);

    [Theory]
    [InlineData("200 mL,300 mL", "200 300")]
    [InlineData("3 x 200 mL", "200 200 200")]
    [InlineData("2×0,5 L, all", "500 500 all")]
    [InlineData("2 times 100 mL", "100 100")]
    [InlineData("half, all", "360 all")]
    [InlineData("1/4", "180")]
    public void Amounts_out_of_a_jar_are_read_as_people_say_them(string written, string milliliters) => Assert.Equal(
        milliliters,
        string.Join(' ', TakenText.ReadList(written, "into").Require().Select(one => one.Of(Volume.FromMilliliters(720)) is { } so ? $"{so.Milliliters:0}" : "all")));

    [Theory]
    [InlineData("200 mL 300 mL", "JL475")]
    [InlineData("0 x 200 mL", "JL110")]
    [InlineData("101 x 200 mL", "JL110")]
    [InlineData("3 x", "JL102")]
    [InlineData("halves", "JL101")]
    public void What_is_no_list_of_amounts_is_refused(string written, string code) =>
        Assert.Contains(code, TakenText.ReadList(written, "into").Problems.Select(problem => problem.Code));

    [Theory]
    [InlineData("2026-03-04", "2026-03-04T12:00:00")]
    [InlineData("2026-03-04T14:30", "2026-03-04T14:30:00")]
    [InlineData("2026-03-04 14:30", "2026-03-04T14:30:00")]
    [InlineData(" 2026-03-04  9:05 ", "2026-03-04T09:05:00")]
    [InlineData("yesterday", "2026-03-08T12:00:00")]
    [InlineData("Yesterday 16:20", "2026-03-08T16:20:00")]
    [InlineData("today", "2026-03-09T10:15:00")]
    [InlineData("now", "2026-03-09T10:15:00")]
    public void A_moment_is_read_as_people_write_it(string written, string moment) =>
        Assert.Equal(moment, $"{ValueReader.Moment(Now)(written, "at").Require():yyyy-MM-ddTHH:mm:ss}");

    [Theory]
    [InlineData("3/4/2026")]
    [InlineData("4.3.2026")]
    [InlineData("04-03-2026")]
    [InlineData("yesterday noon")]
    [InlineData("2026-03-04 25:00")]
    [InlineData("tomorrow")]
    public void A_date_that_could_be_two_or_is_none_is_refused(string written) =>
        Assert.Equal("JL109", Assert.Single(ValueReader.Moment(Now)(written, "at").Problems).Code);

    [Theory]
    [InlineData("passed", "Hard")]
    [InlineData("PASS", "Hard")]
    [InlineData("hard", "Hard")]
    [InlineData("failed", "Soft")]
    [InlineData("tacky", "Soft")]
    [InlineData("slow", "Slow")]
    public void A_verdict_is_said_in_either_form(string written, string verdict) => Assert.Equal(verdict, $"{ValueReader.Verdict(written, "verdict").Require()}");

    [Theory]
    [InlineData("2%", "not a percentage")]
    [InlineData("2 %", "not a percentage")]
    [InlineData("1.500", "thousands or decimals")]
    [InlineData("1,500", "a number from 0 to 2000")]
    [InlineData("2001", "a number from 0 to 2000")]
    public void A_number_is_no_percentage_and_only_one_number(string written, string says)
    {
        var problem = Assert.Single(ValueReader.Number(0, 2000, 6)(written, "changes").Problems);
        Assert.Equal("JL110", problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("95", 95)]
    [InlineData("95 %", 95)]
    [InlineData("95.5%", 95.5)]
    public void A_percentage_may_have_its_sign(string written, double percent) => Assert.Equal(percent, ValueReader.Percent(0, 100, 95)(written, "strength").Require());

    /// <summary>Where thousands cannot be meant, the point parts decimals.</summary>
    [Fact]
    public void A_small_number_has_as_many_figures_as_it_likes() => Assert.Equal(1.5, ValueReader.Number(1, 10, 3)("1.500", "mixing").Require());
}
