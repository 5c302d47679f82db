namespace JarLabel.Tests.Layout.Checks;

/// <summary>The room that a text takes, held to the edge of the label.</summary>
public class ExtentTests
{
    [Theory]
    [InlineData("ý")]
    [InlineData("ÿ")]
    [InlineData("ą")]
    [InlineData("ę")]
    [InlineData("ş")]
    [InlineData("ģ")]
    public void A_letter_with_a_tail_takes_the_room_below(string letter) => Assert.True(Foot(letter));

    [Theory]
    [InlineData("é")]
    [InlineData("142")]
    [InlineData("ß")]
    [InlineData("Ö")]
    public void A_letter_without_one_does_not(string letter) => Assert.False(Foot(letter));

    /// <summary>On a label of 50 x 30 mm with an inset of 2 mm, a baseline at 28 mm is the last: what goes below it leaves the safe part.</summary>
    private static bool Foot(string text) => new Preflight(new SkiaRuler())
        .Check(new PlacedLabel(LayoutFiles.DesignOf("""{ "kind": "space" }""").Require(), LayoutFiles.Area(), [new TextMark("box", 5, 28, text, Face.Regular, 10, Ink.Black)], []), 100, 100)
        .Any(problem => problem.Code == "JL316");
}
