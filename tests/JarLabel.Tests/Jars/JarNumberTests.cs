namespace JarLabel.Tests.Jars;

public class JarNumberTests
{
    [Theory, Cites(References.Iso7064, "hybrid system MOD 11,10: the check character of 0794 is 5")]
    [InlineData("0794", 5)]
    public void The_check_digit_is_that_of_the_standard(string digits, int check) => Assert.Equal(check, CheckDigit.Of(digits));

    [Theory]
    [InlineData("142", "142-5")]
    [InlineData("142-5", "142-5")]
    [InlineData(" 142-5 ", "142-5")]
    public void A_jar_is_read_with_and_without_its_check_digit(string read, string written) =>
        Assert.Equal(written, JarNumber.Read(read, "JAR").Require().ToString());

    [Theory]
    [InlineData("142-6", "JL142")]
    [InlineData("0", "JL141")]
    [InlineData("-5", "JL141")]
    [InlineData("142-5-1", "JL141")]
    [InlineData("fourteen", "JL141")]
    [InlineData("9999999999", "JL141")]
    [InlineData("", "JL141")]
    public void A_misread_jar_is_told(string read, string code) =>
        Assert.Equal(code, Assert.Single(JarNumber.Read(read, "JAR").Problems).Code);

    [Fact]
    public void A_single_wrong_digit_is_always_found() =>
        Gen.Select(Gen.Int[1, 999_999_999], Gen.Int[0, 8], Gen.Int[1, 9]).Sample((value, at, shift) =>
        {
            var digits = JarNumber.From(value).ToString().Replace("-", "", StringComparison.Ordinal).ToCharArray();
            at %= digits.Length;
            digits[at] = (char)('0' + ((digits[at] - '0' + shift) % 10));
            return CheckDigit.Of(digits.AsSpan(0, digits.Length - 1)) != digits[^1] - '0';
        });
}
