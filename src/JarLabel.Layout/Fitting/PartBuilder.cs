namespace JarLabel.Layout.Fitting;

/// <summary>Puts one label's contents into a design's boxes.</summary>
internal sealed class PartBuilder
{
    private readonly Fit fit;
    private readonly Design design;
    private readonly Dictionary<string, (Voice Voice, Ladder Ladder)> voices = new(StringComparer.Ordinal);

    internal PartBuilder(Fit fit, Design design)
    {
        this.fit = fit;
        this.design = design;
        foreach (var voice in design.Voices)
            voices[voice.Name] = (voice, new Ladder(voice.Sizes));
    }

    /// <summary>The whole tree. Symbols climb first, then the voices in their order.</summary>
    internal Part Build()
    {
        var root = design.Shape == LabelShape.Round && design.Box is StackBox bands
            ? new BandsPart(fit, bands, [.. bands.Boxes.Select(Build)])
            : Build(design.Box);
        fit.Ladders.AddRange(design.Voices.Select(voice => voices[voice.Name].Ladder));
        return root;
    }

    private Part Build(Box box) => box switch
    {
        StackBox { Downwards: true } rows => new RowsPart(fit, rows, [.. rows.Boxes.Select(Build)]),
        StackBox columns => new ColumnsPart(fit, columns, [.. columns.Boxes.Select(Build)]),
        TextBox text => new TextPart(fit, text, voices[text.Voice].Voice, voices[text.Voice].Ladder),
        FigureBox figure => new FigurePart(fit, figure, voices[figure.Voice].Voice, voices[figure.Voice].Ladder),
        ListBox list => new ListPart(fit, list, voices[list.Voice].Voice, voices[list.Voice].Ladder),
        TableBox table => new TablePart(fit, table, voices[table.Voice].Voice, voices[table.Voice].Ladder),
        QrBox code => new QrPart(fit, code),
        ToneBox tone => new TonePart(fit, tone),
        SymbolsBox symbols => new SymbolsPart(fit, symbols),
        RuleBox rule => new RulePart(fit, rule),
        SpaceBox space => new SpacePart(fit, space),
        _ => throw new NotSupportedException($"No part for a {box.GetType().Name}."),
    };
}

/// <summary>A line: lying in rows, standing in columns.</summary>
internal sealed class RulePart(Fit fit, RuleBox box) : WordlessPart(fit, box.Frame)
{
    internal override bool Speaks => false;

    private bool Lies => Parent is StackPart { Downwards: true };

    internal override void Draw(Area area, Ink ink, List<Mark> marks) =>
        marks.Add(Lies
            ? new BarMark(Frame.Name, area.X, area.Y, area.Width, box.Thickness, ink)
            : new BarMark(Frame.Name, area.X, area.Y, box.Thickness, area.Height, ink));

    protected override double NaturalWidth() => Lies ? 0 : box.Thickness;

    protected override double NaturalHeight(double width) => Lies ? box.Thickness : 0;
}

/// <summary>White.</summary>
internal sealed class SpacePart(Fit fit, SpaceBox box) : WordlessPart(fit, box.Frame)
{
    internal override bool Speaks => false;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
    }

    protected override double NaturalWidth() => 0;

    protected override double NaturalHeight(double width) => 0;
}

/// <summary>A part without words: a code, a tone bar, symbols, a rule, white.</summary>
internal abstract class WordlessPart(Fit fit, BoxFrame frame) : Part(fit, frame)
{
    internal override IEnumerable<string> Moved => LeftOut > 0 ? Texts : [];

    internal override IEnumerable<string> Texts => [];
}
