namespace JarLabel.Layout.Fitting;

/// <summary>A number taken apart: what stands large, and a fraction at its end.</summary>
/// <param name="Whole">The part before the fraction; empty for a fraction alone.</param>
/// <param name="Over">Above the bar; empty when there is no fraction.</param>
/// <param name="Under">Below the bar.</param>
internal readonly record struct Figure(string Whole, string Over, string Under)
{
    private static readonly Dictionary<char, (string Over, string Under)> Fractions = new()
    {
        ['½'] = ("1", "2"),
        ['⅓'] = ("1", "3"),
        ['⅔'] = ("2", "3"),
        ['¼'] = ("1", "4"),
        ['¾'] = ("3", "4"),
        ['⅛'] = ("1", "8"),
        ['⅜'] = ("3", "8"),
        ['⅝'] = ("5", "8"),
        ['⅞'] = ("7", "8"),
    };

    internal bool HasFraction => Over.Length > 0;

    internal static Figure Of(string text) => text.Length > 0 && Fractions.TryGetValue(text[^1], out var fraction)
        ? new Figure(text[..^1], fraction.Over, fraction.Under)
        : new Figure(text, "", "");
}
