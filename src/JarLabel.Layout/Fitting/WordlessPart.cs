using JarLabel.Layout.Designs;

namespace JarLabel.Layout.Fitting;

/// <summary>A part without words: a code, a tone bar, symbols, a rule, white.</summary>
internal abstract class WordlessPart(Fit fit, BoxFrame frame) : Part(fit, frame)
{
    internal override IEnumerable<string> Moved => LeftOut > 0 ? Texts : [];

    internal override IEnumerable<string> Texts => [];
}
