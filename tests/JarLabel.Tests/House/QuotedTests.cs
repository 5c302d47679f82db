namespace JarLabel.Tests.House;

/// <summary>What was read, as a message shows it: nothing invisible, nothing cut through the middle of a character.</summary>
public class QuotedTests
{
    [Theory]
    [InlineData("a\u202Eb", "\"a<U+202E>b\"")]
    [InlineData("\u2066x\u2069", "\"<U+2066>x<U+2069>\"")]
    [InlineData("\u200Fx", "\"<U+200F>x\"")]
    [InlineData("a\u001Bb", "\"a\uFFFDb\"")]
    [InlineData("viola", "\"viola\"")]
    public void What_cannot_be_seen_is_shown(string read, string quoted) => Assert.Equal(quoted, Quoted.Of(read));

    [Theory]
    [InlineData("\U0001F3BB")]
    [InlineData("e\u0301")]
    [InlineData("\U0001F469\u200D\U0001F527")]
    public void A_long_text_is_cut_between_two_characters(string character)
    {
        var sixty = string.Concat(Enumerable.Repeat(character, 60));
        Assert.Equal($"\"{sixty}\"", Quoted.Of(sixty));
        Assert.Equal($"\"{sixty}...\"", Quoted.Of(sixty + character));
    }
}
