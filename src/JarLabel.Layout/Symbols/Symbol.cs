namespace JarLabel.Layout.Symbols;

/// <summary>A hazard pictogram or safety sign, drawn for this project after the published standards' descriptions.</summary>
/// <param name="Code">Such as <c>GHS02</c> or <c>P003</c>.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Layers">Its outlines.</param>
public sealed record Symbol(string Code, string Title, IReadOnlyList<SymbolLayer> Layers)
{
    /// <summary>Width and height of the frame all symbols are drawn in.</summary>
    public const double Frame = 100;

    private static readonly Lazy<IReadOnlyDictionary<string, Symbol>> Drawings = new(Read);

    /// <summary>All there are, by code.</summary>
    public static IReadOnlyDictionary<string, Symbol> All => Drawings.Value;

    /// <summary>The symbol of a code, or null.</summary>
    public static Symbol? Find(string code) => All.GetValueOrDefault(code);

    internal void Draw(string box, double x, double y, double size, List<Mark> marks)
    {
        foreach (var layer in Layers)
            marks.Add(new PathMark(box, x, y, size / Frame, layer.Data, layer.Ink));
    }

    private static Dictionary<string, Symbol> Read()
    {
        const string file = "symbols.json";
        return StrictJson.ReadList(file, LayoutProblems.DesignFile, LayoutLibrary.OwnBytes(file), Take).Require()
            .ToDictionary(symbol => symbol.Code, StringComparer.Ordinal);
    }

    private static Symbol Take(FieldReader fields) => new(
        fields.Text("code"),
        fields.Text("title"),
        fields.List("layers", layer => new SymbolLayer(layer.Choice("ink", LayoutKeywords.Inks), layer.Text("d"))));
}

/// <summary>One filled outline of a symbol; layers cover each other in order.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="Data">SVG path data in a frame of 100 by 100, even-odd.</param>
public readonly record struct SymbolLayer(Ink Ink, string Data);
