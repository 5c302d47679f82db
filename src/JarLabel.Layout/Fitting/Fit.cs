using JarLabel.Core.Labels;

namespace JarLabel.Layout.Fitting;

/// <summary>What all parts of one label share while it is being fitted.</summary>
/// <param name="text">The label's strings.</param>
/// <param name="ruler">Measures them.</param>
internal sealed class Fit(LabelText text, ITextRuler ruler)
{
    /// <summary>Lengths closer than this are equal; far below what a printer can place.</summary>
    internal const double Closeness = 0.005;

    internal LabelText Text => text;

    internal ITextRuler Ruler => ruler;

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
