namespace JarLabel.Layout.Checks;

/// <summary>Finds lines of text that run into each other. White words on white paper lie under the stacked fraction they spell.</summary>
internal static class OverlapCheck
{
    // Letters that touch by less than this do not meet on paper.
    private const double Touch = 0.15;

    private static bool Spells(TextMark under, TextMark over) => under.Ink == Ink.White && under.Box == over.Box;

    internal static IEnumerable<Problem> Problems(string design, List<SetText> texts)
    {
        for (var later = 1; later < texts.Count; later++)
        {
            for (var earlier = 0; earlier < later; earlier++)
            {
                if (!Spells(texts[earlier].Mark, texts[later].Mark) && texts[later].Extent.Over(texts[earlier].Extent) > Touch)
                    yield return LayoutProblems.TextsOverlap($"{design}/{texts[later].Mark.Box}", texts[earlier].Mark.Box, texts[later].Mark.Text);
            }
        }
    }
}
