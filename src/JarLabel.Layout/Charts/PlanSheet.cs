namespace JarLabel.Layout.Charts;

/// <summary>A planned job on one upright sheet for the bench: what it takes, and the steps with boxes to tick. The steps are set as large as
/// they find room; the last ones of a very long job are left to the terminal, and the sheet says so.</summary>
public sealed class PlanSheet
{
    private const double Margin = 12;
    private const double Head = 8.5, Body = 10;
    private const double LabelWidth = 24;
    private const double Tick = 4.6, TickLine = 0.4, TickRoom = 16;
    private const double MoreRoom = 6;
    private static readonly double[] StepSizes = [13, 12, 11, 10, 9, 8];
    private static readonly Strokes Draw = new("sheet");

    // Ends of the columns of figures and starts of the two of words, as parts of the line.
    private static readonly double[] Columns = [0, 0.06, 0.29, 0.37, 0.59, 0.82, 1];

    private readonly PlanSheetText text;
    private readonly Paper paper;
    private readonly ChartType type;
    private readonly Paragraphs paragraphs;
    private readonly List<Mark> marks = [];

    private PlanSheet(PlanSheetText text, Paper paper, ITextRuler ruler) =>
        (this.text, this.paper, type, paragraphs) = (text, paper, new ChartType(ruler), new Paragraphs(ruler));

    private double Width => paper.Width - (2 * Margin);

    private IEnumerable<(string Words, Face Face)> Cautions =>
        [.. text.Cautions.Select((words, i) => (words, i == 0 ? Face.Bold : Face.Regular)), (text.Closing, Face.SemiBold)];

    /// <summary>The sheet.</summary>
    /// <param name="text">Its words.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="ruler">Measures text.</param>
    public static Page Of(PlanSheetText text, Paper paper, ITextRuler ruler) => new PlanSheet(text, paper, ruler).Page();

    private Page Page()
    {
        marks.Add(type.Within("title", Margin, 20, Width, text.Title, Face.Bold, 26, 22, 18, 14));
        var y = Set("summary", text.Summary, Face.Regular, Body, 0, 27);
        y = Takes(Lines(y + 6) + 8.5);
        var foot = paper.Height - Margin - 4 - (Cautions.Sum(said => Broken(said.Words, said.Face, Body, 0).Count) * Line(Body));
        Foot(foot);
        Steps(y + 6, foot - 4);
        return new Page(paper.Width, paper.Height, marks);
    }

    private double Lines(double y)
    {
        AddRow(PlanWords.LineHeads, y, Face.Regular, Head);
        marks.Add(Draw.Bar(Margin, y + 1.6, Width, 0.3));
        foreach (var line in text.Lines)
        {
            y += 6;
            AddRow(line, y, Face.SemiBold, Body);
        }

        return y;
    }

    private void AddRow(IReadOnlyList<string> cells, double y, Face face, double points) => marks.AddRange(cells.Zip(PlanWords.LineHeads, Columns).Select(cell =>
    {
        var (words, head, column) = cell;
        var x = Margin + (column * Width);
        return head[0] == ' ' ? type.EndingAt("lines", x, y, words.TrimStart(), face, points) : ChartType.At("lines", x, y, words, face, points);
    }));

    private double Takes(double y)
    {
        foreach (var (label, words) in text.Takes)
        {
            marks.Add(ChartType.At("takes", Margin, y, label, Face.Bold, Body));
            y = Set("takes", words ?? "", Face.Regular, Body, LabelWidth, y) + Line(Body) + 0.8;
        }

        return y;
    }

    private void Steps(double top, double bottom)
    {
        marks.Add(Draw.Bar(Margin, top - 4, Width, 0.6));
        marks.Add(ChartType.At("steps", Margin, top + 1, PlanSheetText.StepsHead, Face.Regular, Head));
        var y = top + 8;
        var points = StepSizes.FirstOrDefault(size => text.Steps.Sum(step => Height(step, size)) <= bottom - y, StepSizes[^1]);
        var shown = Shown(points, bottom - y);
        foreach (var (place, step) in text.Steps.Take(shown).Index())
        {
            y = Step(step, place + 1, y, points);
        }

        if (shown < text.Steps.Count)
        {
            marks.Add(ChartType.At("steps", Margin + TickRoom, y, PlanSheetText.More(text.Steps.Count - shown), Face.Bold, Body));
        }
    }

    /// <summary>So many of the steps find room at that size, with a line that tells of the others where it is not all of them.</summary>
    private int Shown(double points, double room)
    {
        var (shown, used) = (0, 0.0);
        foreach (var step in text.Steps)
        {
            used += Height(step, points);
            shown += used <= room - MoreRoom ? 1 : 0;
        }

        return used <= room ? text.Steps.Count : shown;
    }

    private double Step((string Words, string? Command) step, int place, double y, double points)
    {
        var top = y - Tick + 0.6;
        marks.AddRange([
            Draw.Bar(Margin, top, Tick, TickLine), Draw.Bar(Margin, top + Tick - TickLine, Tick, TickLine),
            Draw.Bar(Margin, top, TickLine, Tick), Draw.Bar(Margin + Tick - TickLine, top, TickLine, Tick),
            ChartType.At("steps", Margin + 7, y, place.ToString(CultureInfo.InvariantCulture), Face.Bold, points),
        ]);
        var end = Set("steps", step.Words, Face.SemiBold, points, TickRoom, y);
        if (step.Command is { } command)
        {
            Set("command", command, Face.Regular, CommandSize(points), TickRoom, end + Line(CommandSize(points)));
        }

        return y + Height(step, points);
    }

    private double Height((string Words, string? Command) step, double points) =>
        ((Broken(step.Words, Face.SemiBold, points, TickRoom).Count - 1) * Line(points))
        + (step.Command is { } command ? Broken(command, Face.Regular, CommandSize(points), TickRoom).Count * Line(CommandSize(points)) : 0)
        + (points * 0.8);

    private void Foot(double top)
    {
        marks.Add(Draw.Bar(Margin, top, Width, 0.6));
        var y = top + 6;
        foreach (var (words, face) in Cautions)
        {
            y = Set("cautions", words, face, Body, 0, y) + Line(Body);
        }
    }

    /// <summary>Sets a text from its first baseline on, so far in from the margin; gives the baseline of its last line.</summary>
    private double Set(string box, string words, Face face, double points, double inset, double y)
    {
        var lines = Broken(words, face, points, inset);
        marks.AddRange(lines.Select((line, i) => ChartType.At(box, Margin + inset, y + (i * Line(points)), line, face, points)));
        return y + ((lines.Count - 1) * Line(points));
    }

    private IReadOnlyList<string> Broken(string words, Face face, double points, double inset) => paragraphs.Of(words, face).LinesAt(points, Width - inset);

    private static double Line(double points) => points * 0.45;

    private static double CommandSize(double points) => Math.Max(7.5, points - 3);
}
