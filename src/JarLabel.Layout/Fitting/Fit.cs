namespace JarLabel.Layout.Fitting;

/// <summary>What all parts of one label share while it is being fitted.</summary>
/// <param name="text">The label's strings.</param>
/// <param name="paragraphs">Measures them.</param>
/// <param name="code">The label's code; null when it has none.</param>
/// <param name="area">Where the label lies and on what printer.</param>
/// <param name="dotsLess">How many dots a module is made smaller than the design wants it.</param>
/// <param name="sure">True for weights that a printer without greys draws surely.</param>
internal sealed class Fit(LabelText text, Paragraphs paragraphs, QrModules? code, LabelArea area, int dotsLess, bool sure)
{
    /// <summary>Lengths closer than this are equal; far below what a printer can place.</summary>
    internal const double Closeness = 0.005;

    internal LabelText Text => text;

    internal ITextRuler Ruler => paragraphs.Ruler;

    internal Paragraph ParagraphOf(string words, Face face) => paragraphs.Of(words, face);

    internal QrModules? Code => code;

    internal int Dpi => area.Dpi;

    /// <summary>The weight to set a voice in: heavier than the design wants it where the printer would lose its strokes.</summary>
    internal Face Sure(Face face, Ladder ladder) => sure ? Strokes.Sure(face, ladder.Smallest, area.Dpi) : face;

    /// <summary>The thickness to draw a line in: whole dots where the printer has no greys.</summary>
    internal double Sure(double line) => area.BlackOnly ? OneBit.Thickness(line, area.Dpi) : line;

    internal int DotsLess => dotsLess;

    /// <summary>Sizes that may climb, the one that climbs first in front.</summary>
    internal List<Ladder> Ladders { get; } = [];

    /// <summary>How many things are left out at the moment.</summary>
    internal int LeftOut { get; set; }

    /// <summary>True when a list is cut short by its design, however much room there is.</summary>
    internal bool CutShort { get; set; }

    internal Fault? Fault { get; private set; }

    internal void Clear() => Fault = null;

    internal void NeedWidth(Part part, string shown, double needs, double has)
    {
        if (needs > has + Closeness)
            Fault ??= new Fault(part, true, shown, needs, has);
    }

    internal void NeedWidth(Part part, Func<string> shown, double needs, double has)
    {
        if (needs > has + Closeness)
            Fault ??= new Fault(part, true, shown(), needs, has);
    }

    internal void NeedHeight(Part part, double needs, double has)
    {
        if (needs > has + Closeness)
            Fault ??= new Fault(part, false, "", needs, has);
    }
}

/// <summary>The first thing that did not fit in one attempt.</summary>
/// <param name="Part">Where.</param>
/// <param name="Wide">True when the width was missing, false for the height.</param>
/// <param name="Text">What stands there; empty for height.</param>
/// <param name="Needs">mm it needs.</param>
/// <param name="Has">mm it has.</param>
internal sealed record Fault(Part Part, bool Wide, string Text, double Needs, double Has)
{
    internal double Missing => Needs - Has;
}
