namespace JarLabel.Tests.Render.Photos;

/// <summary>Labels of our designs, to be photographed.</summary>
internal static class PrintedDesign
{
    /// <summary>A design with what a jar usually has to say, and this in its code.</summary>
    public static PrintedLabel Of(string design, string payload)
    {
        var shape = LayoutFiles.Design(design);
        var area = new LabelArea(shape.Shape, 0, 0, shape.Width, shape.Height, 300);
        var placed = Composer.Place(SampleLabels.All["typical"] with { Code = payload }, shape, area, new SkiaRuler()).Require();
        return new PrintedLabel(new Page(shape.Width, shape.Height, placed.Marks), placed.Marks.OfType<QrMark>().Single(), payload);
    }
}
