namespace JarLabel.Tests.Layout;

/// <summary>What every drawing must be: on its paper, and no words in each other.</summary>
internal static class PlainPages
{
    internal static readonly SkiaRuler Ruler = new();

    internal static IEnumerable<TextMark> Texts(this Page page) => page.Marks.OfType<TextMark>();

    internal static TextMark Said(this Page page, string start) => page.Texts().First(m => m.Text.StartsWith(start, StringComparison.Ordinal));

    internal static void AssertTidy(Page page, string name)
    {
        var boxes = page.Texts().Where(m => m.Text.Length > 0).Select(m => (m.Text, m.X, Top: m.Baseline - (m.Points * 0.26), Right: m.X + Ruler.Width(m.Text, m.Face, m.Points), Bottom: m.Baseline + (m.Points * 0.06))).ToArray();
        Assert.All(boxes, b => Assert.True(b.X >= 2 && b.Right <= page.Width - 2 && b.Top >= 2 && b.Bottom <= page.Height - 2, $"{name}: {b}"));
        Assert.All(page.Marks.OfType<BarMark>(), b => Assert.True(b.X >= 2 && b.X + b.Width <= page.Width - 2 && b.Y >= 2 && b.Y + b.Height <= page.Height - 2, $"{name}: {b}"));
        Assert.Empty(boxes.SelectMany((a, i) => boxes.Skip(i + 1).Where(b => a.X < b.Right && b.X < a.Right && a.Top < b.Bottom && b.Top < a.Bottom).Select(b => $"{name}: {a.Text} | {b.Text}")));
    }
}
