using JarLabel.Core.Air;
using UnitsNet;

namespace JarLabel.Layout.Charts;

/// <summary>A small chart of what is in a room's air over time, with the limits drawn in. The exposure limit is the heavy line, those for fire
/// are thin; everything reads in one-bit black.</summary>
public static class AirChart
{
    private const string Box = "chart";
    private const double Width = 180;
    private const double Left = 22;
    private const double Right = 130;
    private const double Top = 24;
    private const double Bottom = 92;
    private const double NoteTop = 109;
    private const double NoteLine = 4;
    private const double BottomMargin = 4;
    private const int CurveSteps = 240;
    private const double Small = 8;
    private const double LabelLine = 4;

    /// <summary>The chart on a page of its own.</summary>
    /// <param name="air">What was answered for the room.</param>
    /// <param name="text">Its words.</param>
    /// <param name="ruler">Measures text.</param>
    public static Page Of(AirAssessment air, AirChartText text, ITextRuler ruler)
    {
        var length = Length(air);
        var scale = Scale(air, text, length);
        return new Page(Width, NoteTop + ((text.Notes.Count - 1) * NoteLine) + BottomMargin,
        [
            .. Headings(text),
            .. Axes(scale, ruler),
            .. Limits(scale, text, ruler),
            .. Curve(scale, AirCurve.Of(air, length, CurveSteps)),
            .. text.Notes.Select((note, i) => Line(4, NoteTop + (i * NoteLine), note)),
        ]);
    }

    /// <summary>From the start until the air is clear and a little more; a closed room, which never clears, as long again as the drying.
    /// At least half an hour, at most two days.</summary>
    private static Duration Length(AirAssessment air)
    {
        var drying = air.Question.Over?.Minutes ?? 0;
        var after = air.ClearAfter is { Minutes: > 0 } clear ? clear.Minutes : Math.Max(drying, 30);
        return Duration.FromMinutes(Math.Max(drying * 1.1, Math.Clamp((drying + after) * 1.1, 30, 2880)));
    }

    private static ChartScale Scale(AirAssessment air, AirChartText text, Duration length)
    {
        double[] shown = [air.PeakPpm, .. text.Limits.Select(l => l.Ppm)];
        var highest = (int)Math.Ceiling(Math.Log10(shown.Max() * 1.2));
        var lowest = (int)Math.Floor(Math.Log10(shown.Min() / 4));
        return new ChartScale((Left, Top, Right, Bottom), length.Minutes, Math.Clamp(lowest, highest - 7, highest - 1), highest);
    }

    private static IEnumerable<Mark> Headings(AirChartText text) =>
    [
        new TextMark(Box, 4, 8, text.Title, Face.Bold, 12, Ink.Black),
        new TextMark(Box, 4, 13.5, text.Peak, Face.SemiBold, 9, Ink.Black),
        Line(4, 20, text.ExifOrientation),
        Line(Left, Bottom + 10, text.Across),
    ];

    private static IEnumerable<Mark> Axes(ChartScale scale, ITextRuler ruler)
    {
        yield return new BarMark(Box, Left, Top, 0.3, Bottom - Top, Ink.Black);
        yield return new BarMark(Box, Left, Bottom - 0.3, Right - Left, 0.3, Ink.Black);
        for (var decade = scale.Lowest; decade <= scale.Highest; decade++)
        {
            var (y, figure) = (scale.Y(Math.Pow(10, decade)), Figure(decade));
            yield return new BarMark(Box, Left - 1.5, y - 0.15, 1.5, 0.3, Ink.Black);
            yield return Line(Left - 2.5 - ruler.Width(figure, Face.Regular, Small), y + 1, figure);
        }

        foreach (var minute in scale.TimeMarks())
        {
            var (x, words) = (scale.X(minute), Clock(minute));
            yield return new BarMark(Box, x - 0.15, Bottom, 0.3, 1.5, Ink.Black);
            yield return Line(x - (ruler.Width(words, Face.Regular, Small) / 2), Bottom + 5, words);
        }
    }

    /// <summary>Each line with its words at its end; words that would run into each other are pushed upwards.</summary>
    private static IEnumerable<Mark> Limits(ChartScale scale, AirChartText text, ITextRuler ruler)
    {
        var (type, free) = (new ChartType(ruler), Bottom);
        foreach (var limit in text.Limits)
        {
            var (y, thick, face) = (scale.Y(limit.Ppm), limit.Health ? 0.7 : 0.25, limit.Health ? Face.Bold : Face.Regular);
            yield return new BarMark(Box, Left, y - (thick / 2), Right - Left, thick, Ink.Black);
            var middle = Math.Min(y, free - (LabelLine / 2));
            yield return Leader(y, middle);
            yield return new TextMark(Box, Right + 4, middle + type.HalfCap(face, Small), limit.Words, face, Small, Ink.Black);
            free = middle - (LabelLine / 2);
        }
    }

    private static PathMark Leader(double from, double to) => new Strokes(Box).Line((Right, from), (Right + 3.2, to), 0.125);

    /// <summary>What lies below the axis is left out.</summary>
    private static IEnumerable<Mark> Curve(ChartScale scale, IReadOnlyList<AirPoint> points)
    {
        var drawn = points.Select(p => (X: scale.X(p.Elapsed.Minutes), Y: scale.Y(p.Ppm))).ToArray();
        return drawn.Zip(drawn.Skip(1)).Where(step => Math.Min(step.First.Y, step.Second.Y) < Bottom - 0.001).Select(step => new Strokes(Box).Line(step.First, step.Second, 0.45));
    }

    private static TextMark Line(double x, double baseline, string words) => new(Box, x, baseline, words, Face.Regular, Small, Ink.Black);

    private static string Figure(int decade) => Math.Pow(10, decade).ToString(decade < 0 ? "0.#####" : "0", CultureInfo.InvariantCulture);

    private static string Clock(double minutes) => minutes == 0 ? "0" : AirWords.Time(Duration.FromMinutes(minutes));
}
