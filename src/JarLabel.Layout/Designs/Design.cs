namespace JarLabel.Layout.Designs;

/// <summary>How a label looks: its voices and its tree of boxes.</summary>
/// <param name="Id">Its name, the same as its file's.</param>
/// <param name="Title">What it is, for a person.</param>
/// <param name="Shape">The outline it is drawn for.</param>
/// <param name="Width">Width of the smallest label it is for, mm.</param>
/// <param name="Height">Height of the smallest label it is for, mm.</param>
/// <param name="Inset">White kept at the label's edge, mm.</param>
/// <param name="Voices">Its sizes of type; the first grows first.</param>
/// <param name="Box">The outermost box.</param>
/// <param name="Source">Where its measures come from.</param>
public sealed record Design(
    string Id, string Title, LabelShape Shape, double Width, double Height, double Inset, IReadOnlyList<Voice> Voices, Box Box, string Source)
{
    /// <summary>True when a label of this outline and size is large enough for it.</summary>
    public bool Suits(LabelArea area) => area.Shape == Shape && area.Width >= Width - 0.05 && area.Height >= Height - 0.05;

    /// <summary>The same design with its large figure one size smaller than it wants it, and so on, while it still stands out.</summary>
    public IEnumerable<Design> Pinched()
    {
        if (Figure(Box) is not { } figure)
            yield break;
        var least = StandsOut * Voices.Where(voice => voice.Name != figure).SelectMany(voice => voice.Sizes).DefaultIfEmpty().Max();
        var smallest = Voices.First(voice => voice.Name == figure).Sizes[^1];
        foreach (var size in TypeScale.Points.Reverse().Where(size => size < smallest && size >= least))
            yield return this with { Voices = [.. Voices.Select(voice => voice.Name == figure ? voice with { Sizes = [.. voice.Sizes, size] } : voice)] };
    }

    /// <summary>How many times the largest other size the figure is at the least.</summary>
    private const double StandsOut = 1.5;

    private static string? Figure(Box box) => box switch
    {
        FigureBox figure => figure.Voice,
        StackBox stack => stack.Boxes.Select(Figure).FirstOrDefault(voice => voice is not null),
        _ => null,
    };
}
