using JarLabel.Layout.Checks;
using UnitsNet;

namespace JarLabel.Layout;

/// <summary>Looks at the marks of a label as a printer would, independently of how they were placed, before anything is written.</summary>
/// <param name="ruler">Measures text.</param>
/// <param name="readBack">Reads a code with a second library and says what it holds, null for unreadable; leave out to skip that check.</param>
public sealed class Preflight(ITextRuler ruler, Func<QrModules, string?>? readBack = null)
{
    /// <summary>Every problem found; empty means the label may be printed.</summary>
    /// <param name="label">The label.</param>
    /// <param name="paperWidth">Width of its page, mm.</param>
    /// <param name="paperHeight">Height of its page, mm.</param>
    public IReadOnlyList<Problem> Check(PlacedLabel label, double paperWidth, double paperHeight)
    {
        var texts = label.Marks.OfType<TextMark>().Select(mark => new SetText(mark, Extent.Of(mark, ruler))).ToList();
        return
        [
            .. EdgeCheck.Problems(label, paperWidth, paperHeight, ruler),
            .. GlyphCheck.Problems(label.Design.Id, texts, ruler),
            .. OverlapCheck.Problems(label.Design.Id, texts),
            .. CodeCheck.Problems(label, ruler, readBack),
        ];
    }

    /// <summary>Every text on pages that no design made which the typeface cannot draw.</summary>
    /// <param name="name">What the pages are called in a message.</param>
    /// <param name="pages">The pages.</param>
    /// <param name="ruler">Knows the typeface.</param>
    public static IReadOnlyList<Problem> CheckType(string name, IReadOnlyList<Page> pages, ITextRuler ruler)
    {
        return [.. GlyphCheck.Problems(name, pages.SelectMany(p => p.Marks).OfType<TextMark>().DistinctBy(m => m.Text).Select(m => new SetText(m, Extent.Of(m, ruler))), ruler)];
    }

    /// <summary>Every sign, signal word and large sentence that is too small to be read from a distance.</summary>
    /// <param name="label">The wall sign.</param>
    /// <param name="distance">From how far it is to be read.</param>
    public IReadOnlyList<Problem> CheckFrom(PlacedLabel label, Length distance) => [.. ViewingCheck.Problems(label, distance, ruler)];
}
