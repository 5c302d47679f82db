using System.Globalization;
using JarLabel.Core.Labels;
using JarLabel.Core.Planning;
using JarLabel.Layout.Fitting;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Charts;

/// <summary>A planned job on one upright sheet for the bench: what it takes, and the steps with boxes to tick. The steps are set as large as
/// they find room; the last ones of a very long job are left to the terminal, and the sheet says so.</summary>
public static class PlanSheet
{
    private const double Margin = 12;
    private const double Head = 8.5, Body = 10;
    private const double LabelWidth = 24;
    private const double Tick = 4.6, TickRoom = 16;
    private const double LineSpace = 0.45;
    private static readonly double[] StepSizes = [13, 12, 11, 10, 9, 8];
    private static readonly Strokes Draw = new("sheet");

    // Ends of the columns of figures and starts of the two of words, as parts of the line.
    private static readonly double[] Columns = [0, 0.06, 0.29, 0.37, 0.59, 0.82, 1];

    /// <summary>The sheet.</summary>
    /// <param name="text">Its words.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="ruler">Measures text.</param>
    public static Page Of(PlanSheetText text, Paper paper, ITextRuler ruler)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(ruler);
        var type = new ChartType(ruler);
        var (marks, width) = (new List<Mark>(), paper.Width - (2 * Margin));
        marks.Add(type.Within("title", Margin, 20, width, text.Title, Face.Bold, 26, 22, 18, 14));
        var y = Set(marks, "summary", text.Summary, Face.Regular, Body, Margin, 27, width, ruler);
        y = Lines(marks, text, y + 6, width, type);
        y = Takes(marks, text, y + 8.5, width, ruler);
        var foot = paper.Height - Margin - FootHeight(text, width, ruler);
        Foot(marks, text, foot, width, ruler);
        Steps(marks, text, y + 6, foot - 4, width, ruler);
        return new Page(paper.Width, paper.Height, marks);
    }

    private static double Lines(List<Mark> marks, PlanSheetText text, double y, double width, ChartType type)
    {
        marks.AddRange(PlanWords.LineHeads.Select((head, i) => Cell(head, i, head, y, width, Face.Regular, Head, type)));
        marks.Add(Draw.Bar(Margin, y + 1.6, width, 0.3));
        foreach (var line in text.Lines)
        {
            y += 6;
            marks.AddRange(line.Select((words, i) => Cell(words, i, PlanWords.LineHeads[i], y, width, Face.SemiBold, Body, type)));
        }

        return y;
    }

    private static TextMark Cell(string words, int column, string head, double y, double width, Face face, double points, ChartType type) => head[0] == ' '
        ? type.EndingAt("lines", Margin + (Columns[column] * width), y, words.TrimStart(), face, points)
        : ChartType.At("lines", Margin + (Columns[column] * width), y, words, face, points);

    private static double Takes(List<Mark> marks, PlanSheetText text, double y, double width, ITextRuler ruler)
    {
        foreach (var (label, words) in text.Takes)
        {
            marks.Add(ChartType.At("takes", Margin, y, label, Face.Bold, Body));
            y = Set(marks, "takes", words ?? "", Face.Regular, Body, Margin + LabelWidth, y, width - LabelWidth, ruler) + Line(Body) + 0.8;
        }

        return y;
    }

    private static void Steps(List<Mark> marks, PlanSheetText text, double top, double bottom, double width, ITextRuler ruler)
    {
        marks.Add(Draw.Bar(Margin, top - 4, width, 0.6));
        marks.Add(ChartType.At("steps", Margin, top + 1, PlanSheetText.StepsHead, Face.Regular, Head));
        top += 8;
        var points = StepSizes.FirstOrDefault(size => Height(text.Steps, size, width, ruler) <= bottom - top, StepSizes[^1]);
        var shown = text.Steps.Count;
        while (shown > 0 && Height(text.Steps.Take(shown), points, width, ruler) > bottom - top - (shown < text.Steps.Count ? 6 : 0))
        {
            shown--;
        }

        var y = top;
        foreach (var (place, step) in text.Steps.Take(shown).Index())
        {
            y = Step(marks, step, place + 1, y, points, width, ruler);
        }

        if (shown < text.Steps.Count)
        {
            marks.Add(ChartType.At("steps", Margin + TickRoom, y, PlanSheetText.More(text.Steps.Count - shown), Face.Bold, Body));
        }
    }

    private static double Step(List<Mark> marks, PlanStep step, int place, double y, double points, double width, ITextRuler ruler)
    {
        var top = y - Tick + 0.6;
        marks.AddRange([
            Draw.Bar(Margin, top, Tick, 0.4), Draw.Bar(Margin, top + Tick - 0.4, Tick, 0.4),
            Draw.Bar(Margin, top, 0.4, Tick), Draw.Bar(Margin + Tick - 0.4, top, 0.4, Tick),
            ChartType.At("steps", Margin + 7, y, place.ToString(CultureInfo.InvariantCulture), Face.Bold, points),
        ]);
        y = Set(marks, "steps", step.Words, Face.SemiBold, points, Margin + TickRoom, y, width - TickRoom, ruler);
        if (step.Command is { } command)
        {
            y = Set(marks, "command", command, Face.Regular, CommandSize(points), Margin + TickRoom, y + Line(CommandSize(points)), width - TickRoom, ruler);
        }

        return y + Gap(points);
    }

    private static double Height(IEnumerable<PlanStep> steps, double points, double width, ITextRuler ruler) => steps.Sum(step =>
        ((Broken(step.Words, Face.SemiBold, points, width - TickRoom, ruler).Count - 1) * Line(points))
        + (step.Command is { } command ? Broken(command, Face.Regular, CommandSize(points), width - TickRoom, ruler).Count * Line(CommandSize(points)) : 0)
        + Gap(points));

    private static double FootHeight(PlanSheetText text, double width, ITextRuler ruler) =>
        Said(text).Sum(said => Broken(said.Words, said.Face, Body, width, ruler).Count * Line(Body)) + 4;

    private static void Foot(List<Mark> marks, PlanSheetText text, double top, double width, ITextRuler ruler)
    {
        marks.Add(Draw.Bar(Margin, top, width, 0.6));
        var y = top + 6;
        foreach (var (words, face) in Said(text))
        {
            y = Set(marks, "cautions", words, face, Body, Margin, y, width, ruler) + Line(Body);
        }
    }

    private static IEnumerable<(string Words, Face Face)> Said(PlanSheetText text) =>
        [.. text.Cautions.Select((words, i) => (words, i == 0 ? Face.Bold : Face.Regular)), (text.Closing, Face.SemiBold)];

    /// <summary>Sets a text from its first baseline on; gives the baseline of its last line.</summary>
    private static double Set(List<Mark> marks, string box, string words, Face face, double points, double x, double y, double width, ITextRuler ruler)
    {
        var lines = Broken(words, face, points, width, ruler);
        marks.AddRange(lines.Select((line, i) => ChartType.At(box, x, y + (i * Line(points)), line, face, points)));
        return y + (Math.Max(0, lines.Count - 1) * Line(points));
    }

    private static IReadOnlyList<string> Broken(string words, Face face, double points, double width, ITextRuler ruler) => new Paragraph(words, face, ruler).LinesAt(points, width);

    private static double Line(double points) => points * LineSpace;

    private static double Gap(double points) => points * 0.8;

    private static double CommandSize(double points) => Math.Max(7.5, points - 3);
}
