namespace JarLabel.Core.Catalog;

/// <summary>A grade of shellac as the trade sells it.</summary>
/// <param name="Id">As typed: <c>garnet</c>.</param>
/// <param name="Name">As printed.</param>
/// <param name="Color">The colour it gives, in words.</param>
/// <param name="Darkness">1, bleached, to 7, ruby.</param>
/// <param name="Waxy">True when the natural wax is still in it.</param>
/// <param name="Keeping">Id of its keeping class.</param>
/// <param name="Form">Id of the form it usually comes in.</param>
/// <param name="Note">What the trade means by the name.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record Grade(
    string Id, string Name, string Color, int Darkness, bool Waxy, string Keeping, string Form, string Note, string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>Most wax, percent by weight.</summary>
    public Figure? WaxPercent { get; init; }

    /// <summary>Least and most acid value, mg of potassium hydroxide per gram.</summary>
    public FigureRange? AcidValue { get; init; }

    /// <summary>Most loss on drying, percent by weight.</summary>
    public Figure? LossOnDrying { get; init; }

    /// <summary>Varnish or polyurethane does not hold on shellac that has its wax. Common practice.</summary>
    public bool HindersVarnishOnTop => Waxy;

    /// <summary>Darkness on the five squares of a label's tone bar.</summary>
    public Tone Tone => new(1 + (((2 * (Darkness - 1)) + 1) / 3), Waxy);

    internal static Grade Read(FieldReader fields) => new(
        fields.Text("id"),
        fields.Text("name"),
        fields.Text("color"),
        fields.Count("darkness", 1, 7),
        fields.Flag("waxy"),
        fields.Text("keeping"),
        fields.Text("form"),
        fields.Text("note"),
        fields.Text("source"))
    {
        Aliases = fields.OptionalTexts("aliases"),
        WaxPercent = fields.OptionalFigure("mostWaxPercent", 0, 20),
        AcidValue = fields.OptionalMember("acidValue", FigureRange.Read),
        LossOnDrying = fields.OptionalFigure("mostLossOnDryingPercent", 0, 20),
    };
}

/// <summary>A published range, both ends included.</summary>
/// <param name="Least">The lower end.</param>
/// <param name="Most">The upper end.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record FigureRange(decimal Least, decimal Most, string Source)
{
    internal static FigureRange Read(FieldReader fields) =>
        new(fields.Exact("least", 0, 1000), fields.Exact("most", 0, 1000), fields.Text("source"));
}
