using JarLabel.Core.Jars;

namespace JarLabel.Layout.Charts;

/// <summary>One page of the drawing of the shelves.</summary>
internal sealed class ShelfChartPage(ShelfChartText text, DayScale scale, Paper side, bool cropped, double pitch, ChartType type)
{
    internal const double Margin = 9;
    internal const double PlotTop = 42;
    internal const double WordsEnd = Margin + 81;
    internal const double DatesWidth = 30;
    private const double WordsAt = Margin + 8;
    private const double WhatAt = Margin + 25;
    private const double Small = 8.5, Figures = 11;
    private static readonly double[] WhatSizes = [10.5, 9.5, 8.5, 7.5];
    private static readonly double[] StandSizes = [8.5, 7.5, 7];

    private double DatesAt => side.Width - Margin - DatesWidth;

    internal Page Of(IReadOnlyList<ShelfChartRow> rows, string pageOf)
    {
        var bottom = PlotTop + (Math.Max(1, rows.Count) * pitch);
        return new Page(side.Width, cropped ? bottom + ShelfChartFoot.Room : side.Height,
        [
            .. Head(pageOf),
            .. Grid(bottom, rows.Count),
            .. rows.SelectMany((row, i) => Row(row, PlotTop + ((i + 0.5) * pitch))),
            .. Today(bottom),
            .. ShelfChartFoot.Of(text, bottom, type),
        ]);
    }

    private IEnumerable<Mark> Head(string pageOf)
    {
        yield return type.Within("title", Margin, 16, side.Width - (2 * Margin) - 35, text.Title, Face.Bold, 20, 17, 14, 11);
        yield return ChartType.At("summary", Margin, 22.5, text.Summary, Face.Regular, 11);
        yield return type.EndingAt("page", side.Width - Margin, 16, pageOf, Face.Regular, 10);
        var x = Margin;
        foreach (var (state, words) in text.Counts)
        {
            foreach (var mark in StateSign.Of(state, x + 2.2, 30, 2.2, "counts"))
            {
                yield return mark;
            }

            yield return ChartType.At("counts", x + 6, 31.5, words, Face.SemiBold, 12);
            x += 14 + type.Width(words, Face.SemiBold, 12);
        }

        yield return ChartType.At("head", DatesAt, PlotTop - 2.5, ShelfChartText.UseByHead, Face.Regular, Small);
    }

    /// <summary>Months as pale lines with their names on top, years above them, and a pale line under every jar.</summary>
    private IEnumerable<Mark> Grid(double bottom, int rows)
    {
        var (draw, free, year) = (new Strokes("grid"), 0.0, 0);
        foreach (var month in scale.Months())
        {
            var (x, name) = (scale.X(month), month.ToString("MMM", CultureInfo.InvariantCulture));
            yield return draw.Bar(x - 0.15, PlotTop - 1, 0.3, bottom - PlotTop + 1, Ink.Pale);
            if (x >= free && x + type.Width(name, Face.Regular, Small) < DatesAt - 2)
            {
                yield return ChartType.At("months", x, PlotTop - 2.5, name, Face.Regular, Small);
                free = x + type.Width(name, Face.Regular, Small) + 1;
            }

            if (month.Year != year && x + type.Width("2000", Face.SemiBold, Small) < DatesAt - 2)
            {
                yield return ChartType.At("months", x, PlotTop - 6.5, month.Year.ToString(CultureInfo.InvariantCulture), Face.SemiBold, Small);
                year = month.Year;
            }
        }

        for (var row = 0; row <= rows; row++)
        {
            yield return draw.Bar(Margin, PlotTop + (row * pitch) - 0.15, side.Width - (2 * Margin), 0.3, Ink.Pale);
        }
    }

    private IEnumerable<Mark> Row(ShelfChartRow row, double middle)
    {
        var (upper, lower) = (middle - 0.6, middle + 3.5);
        return
        [
            .. StateSign.Of(row.State, Margin + 3, middle, 2.6, "state"),
            ChartType.At("jar", WordsAt, upper, row.Number, Face.Bold, Figures),
            type.Within("jar", WhatAt, upper, WordsEnd - WhatAt, row.What, Face.SemiBold, WhatSizes),
            type.Within("jar", WhatAt, lower, WordsEnd - WhatAt, row.Stands, Face.Regular, StandSizes),
            .. new LifeLine(scale, text.Now).Of(row.Days, middle),
            ChartType.At("dates", DatesAt, upper, row.UseBy, Face.Bold, Figures),
            type.Within("dates", DatesAt, lower, DatesWidth, row.Next, row.State is JarState.Good or JarState.Dissolving ? Face.Regular : Face.SemiBold, StandSizes),
        ];
    }

    /// <summary>The heavy line through all jars, with its day at the foot.</summary>
    private IEnumerable<Mark> Today(double bottom)
    {
        var (x, width) = (scale.X(text.Now), type.Width(text.Today, Face.Bold, 9.5) + 4);
        var left = Math.Clamp(x - (width / 2), Margin, side.Width - Margin - width);
        yield return new BarMark("today", x - 0.35, PlotTop - 1, 0.7, bottom - PlotTop + 2.5, Ink.Black);
        yield return new BarMark("today", left, bottom + 1.5, width, 5.6, Ink.Black);
        yield return ChartType.At("today", left + 2, bottom + 5.5, text.Today, Face.Bold, 9.5, Ink.White);
    }
}

/// <summary>How a jar stands, as a shape: filled is good, half is to be tested, hollow is past, dotted is not yet dissolved. Colour comes
/// third, after shape and word.</summary>
internal static class StateSign
{
    private const double Line = 0.4;
    private const int Dots = 8;

    internal static IEnumerable<Mark> Of(JarState state, double x, double y, double radius, string box)
    {
        var draw = new Strokes(box);
        return state switch
        {
            JarState.Good => [draw.Disc(x, y, radius, Ink.Green)],
            JarState.Test => [draw.Disc(x, y, radius, Ink.Orange), draw.HalfDisc(x, y, radius), draw.Ring(x, y, radius, Line)],
            JarState.Dissolving => Enumerable.Range(0, Dots).Select(i => draw.Disc(
                x + ((radius - Line) * Math.Cos(2 * Math.PI * i / Dots)), y + ((radius - Line) * Math.Sin(2 * Math.PI * i / Dots)), 1.1 * Line)),
            _ => [draw.Ring(x, y, radius, Line)],
        };
    }
}
