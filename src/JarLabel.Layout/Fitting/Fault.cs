namespace JarLabel.Layout.Fitting;

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
