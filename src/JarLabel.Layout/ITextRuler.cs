namespace JarLabel.Layout;

/// <summary>Measures text as the renderer will draw it.</summary>
public interface ITextRuler
{
    /// <summary>Advance width of one shaped line, mm.</summary>
    double Width(string text, Face face, double points);

    /// <summary>The vertical measures of a face, as fractions of the type size.</summary>
    FaceMeasures Measures(Face face);

    /// <summary>The first character the face cannot draw (a whole text element), or null when it has them all.</summary>
    string? FirstMissing(string text, Face face);
}

/// <summary>Vertical measures of a face as fractions of the type size, all positive.</summary>
/// <param name="Ascent">Highest reach above the baseline.</param>
/// <param name="Descent">Lowest reach below the baseline.</param>
/// <param name="CapHeight">Height of a capital H.</param>
/// <param name="XHeight">Height of a small x.</param>
public readonly record struct FaceMeasures(double Ascent, double Descent, double CapHeight, double XHeight);
