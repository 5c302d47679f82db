using JarLabel.Layout.Designs;
using JarLabel.Layout.Sheets;

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
