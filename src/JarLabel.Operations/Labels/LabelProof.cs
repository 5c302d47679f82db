namespace JarLabel.Operations.Labels;

/// <summary>A jar's label as it will print, alone and to be looked at: the same words, places and checks as on paper.</summary>
public static class LabelProof
{
    /// <summary>The label as an SVG picture of its own size, or why it cannot be printed.</summary>
    public static Result<byte[]> Svg(Workbench bench, JarHistory history, HazardAssessment hazards, LabelChoice choice)
    {
        return LabelComposer.Open(bench).Then(composer => composer.Choose(choice).Then(stock => composer.Proof(JarWords.Of(bench, history, hazards), stock))).Then<byte[]>(page =>
        {
            using var picture = new MemoryStream();
            SvgRenderer.Write(picture, page);
            return picture.ToArray();
        });
    }
}
