namespace JarLabel.Tests.Jars;

public class JarSpanTests
{
    // Check digits by ISO/IEC 7064 MOD 11,10, as JarNumberTests has them: 142-5, 1-9.
    [Theory]
    [InlineData("142", 142, 142)]
    [InlineData("142-5", 142, 142)]
    [InlineData("150..160", 150, 160)]
    [InlineData(" 1-9 .. 142-5 ", 1, 142)]
    [InlineData("7..7", 7, 7)]
    public void A_jar_or_a_run_is_read(string text, int first, int last)
    {
        var span = JarSpan.Read(text, "jar").Require();
        Assert.Equal((first, last), (span.First.Value, span.Last.Value));
        Assert.Equal(first == last, span.IsOne);
    }

    [Theory]
    [InlineData("160..150", "JL195", "150..160")]
    [InlineData("1..2..3", "JL195", "two dots")]
    [InlineData("1..900000", "JL195", "100000")]
    [InlineData("150-160", "JL194", "150..160")]
    [InlineData("150 - 160", "JL194", "150..160")]
    [InlineData("142-6", "JL142", "142-5")]
    [InlineData("..5", "JL141", "142-5")]
    [InlineData("5..", "JL141", "142-5")]
    [InlineData("all", "JL141", "142-5")]
    public void What_is_no_run_is_told_how_to_write_one(string text, string code, string says)
    {
        var problem = Assert.Single(JarSpan.Read(text, "jar").Problems);
        Assert.Equal((code, "jar"), (problem.Code, problem.Where));
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }
}
