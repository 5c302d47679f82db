using JarLabel.Core.Labels;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

/// <summary>What all parts of one label share while it is being fitted.</summary>
/// <param name="text">The label's strings.</param>
/// <param name="paragraphs">Measures them.</param>
/// <param name="code">The label's code; null when it has none.</param>
/// <param name="dpi">Printer dots per inch.</param>
/// <param name="dotsLess">How many dots a module is made smaller than the design wants it.</param>
internal sealed class Fit(LabelText text, Paragraphs paragraphs, QrModules? code, int dpi, int dotsLess)
{
    /// <summary>Lengths closer than this are equal; far below what a printer can place.</summary>
    internal const double Closeness = 0.005;

    internal LabelText Text => text;

    internal ITextRuler Ruler => paragraphs.Ruler;

    internal Paragraph ParagraphOf(string words, Face face) => paragraphs.Of(words, face);

    internal QrModules? Code => code;

    internal int Dpi => dpi;

    internal int DotsLess => dotsLess;

    /// <summary>Sizes that may climb, the one that climbs first in front.</summary>
    internal List<Ladder> Ladders { get; } = [];

    /// <summary>How many things are left out at the moment.</summary>
    internal int LeftOut { get; set; }

    internal Fault? Fault { get; private set; }

    internal void Clear() => Fault = null;

    internal void NeedWidth(Part part, string shown, double needs, double has)
    {
        if (needs > has + Closeness)
            Fault ??= new Fault(part, true, shown, needs, has);
    }

    internal void NeedHeight(Part part, double needs, double has)
    {
        if (needs > has + Closeness)
            Fault ??= new Fault(part, false, "", needs, has);
    }
}
