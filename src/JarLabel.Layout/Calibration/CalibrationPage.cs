using JarLabel.Layout.Checks;

namespace JarLabel.Layout.Calibration;

/// <summary>The page that shows how a printer meets a sheet: two rulers, crosses at the real places of the labels, codes of several module
/// sizes, and words that say what to measure and what to type.</summary>
/// <param name="sheet">The stock as it is, uncorrected.</param>
/// <param name="printer">The printer's name; null for any.</param>
/// <param name="ruler">Measures text.</param>
public sealed class CalibrationPage(Sheet sheet, string? printer, ITextRuler ruler)
{
    private const double Line = 0.25;
    private const double Arm = 3;
    private const double InsideRoll = 4;
    private const double Tick = 2;

    /// <summary>Edges that a sum of pitches puts within this, mm, are one.</summary>
    private const double Same = 0.001;

    private readonly List<Mark> marks = [];

    /// <summary>True for stock that is one label a page.</summary>
    private bool IsRoll => sheet.Places == 1;

    private bool IsLarge => sheet.PaperWidth >= 180 && sheet.PaperHeight >= 180;

    /// <summary>The page.</summary>
    public Page Draw()
    {
        var (left, top) = IsLarge ? (24.0, 30.0) : IsRound ? Corner() : (9.0, 9.0);
        var (right, bottom) = (sheet.PaperWidth - (IsLarge ? 15 : left), sheet.PaperHeight - (IsLarge ? 10 : top));
        var (across, down) = (LengthFor(IsLarge ? sheet.PaperWidth - 10 : right - left), LengthFor(bottom - top - (IsLarge ? 12 : 5)));
        Across(IsLarge ? (sheet.PaperWidth - across) / 2 : left, top, across);
        Down(left, top + (IsLarge ? 12 : 5), down);
        Words(left + (IsLarge ? 16 : 6), top + (IsLarge ? 20 : 3.5), right, bottom, across, down);
        Crosses();
        return new Page(sheet.PaperWidth, sheet.PaperHeight, marks);
    }

    private bool IsRound => sheet.Shape == LabelShape.Round && IsRoll;

    // The square inside the circle.
    private (double, double) Corner() => (sheet.PaperWidth * 0.24, sheet.PaperHeight * 0.24);

    // 200 or 100 mm where they fit, else what whole centimetres there are.
    private static int LengthFor(double room) => room >= 200 ? 200 : room >= 100 ? 100 : Math.Max(10, (int)(room / 10) * 10);

    private void Across(double x, double y, int length)
    {
        Bar(x, y, length, Line);
        for (var at = 0; at <= length; at += 5)
        {
            Bar(x + at - (Line / 2), y - TickAt(at, length), Line, TickAt(at, length));
            if (at % (length > 100 ? 20 : 10) == 0)
                Centered(x + at, y + 3, Number(at), at % 100 == 0 || at == length ? Face.Bold : Face.Regular, 7);
        }
    }

    private void Down(double x, double y, int length)
    {
        Bar(x, y, Line, length);
        for (var at = 0; at <= length; at += 5)
        {
            Bar(x - TickAt(at, length), y + at - (Line / 2), TickAt(at, length), Line);
            if (at % (length > 100 ? 20 : 10) == 0)
                Text(x + 1.2, y + at + 0.85, Number(at), at % 100 == 0 || at == length ? Face.Bold : Face.Regular, 7);
        }
    }

    private static double TickAt(int at, int length) => at % 100 == 0 || at == length ? 2 * Tick : at % 10 == 0 ? Tick : Tick / 2;

    private void Words(double left, double top, double right, double bottom, int across, int down)
    {
        var points = IsLarge ? 10.0 : 6;
        var step = points * TypePoint.Millimetres * 1.25;
        var y = top + step;
        if (IsLarge)
        {
            Text(left, y, CalibrationWords.Title(sheet.Id, printer), Face.Bold, 14);
            y += 1.6 * step;
        }

        foreach (var sentence in IsLarge ? CalibrationWords.Steps(sheet.Id, printer, across, down, CrossWords) : CalibrationWords.ShortSteps(across, down, InsideRoll))
        {
            var lines = Wrapped(sentence, right - left, points).ToList();
            if (y + ((lines.Count - 1) * step) > bottom)
                break;
            foreach (var line in lines)
            {
                Text(left, y, line, Face.Regular, points);
                y += step;
            }

            y += IsLarge ? 0.5 * step : 0;
        }

        Codes(left, y, right, bottom);
    }

    private string CrossWords => sheet.Shape == LabelShape.Round ? CalibrationWords.OnRounds : CalibrationWords.OnSheet;

    /// <summary>Codes from the finest module to the coarsest, as many as there is room for, each a whole number of the printer's dots.</summary>
    private void Codes(double left, double top, double right, double bottom)
    {
        var x = left;
        foreach (var dots in ((double[])[0.25, 0.34, 0.42, 0.51, 0.68]).Select(size => Math.Max(2, (int)Math.Round(size / 25.4 * sheet.Dpi))).Distinct())
        {
            var module = 25.4 / sheet.Dpi * dots;
            var modules = QrEncoder.Encode(Say($"MODULE {module:0.00} MM"));
            var side = (modules.Size + (2 * QrEncoder.QuietZone)) * module;
            var words = CalibrationWords.Module(module, dots);
            var wide = Math.Max(side, ruler.Width(words, Face.Regular, 6) + 2);
            if (x + wide > right || top + side + 3 > bottom)
                continue;
            var quiet = QrEncoder.QuietZone * module;
            marks.Add(new QrMark("codes", x + quiet, top + quiet, module, modules));
            Text(x + quiet, top + side + 1.5, words, Face.Regular, 6);
            x += wide + 1;
        }
    }

    /// <summary>Crosses at the labels' corners where nothing else stands. Where the edges of two labels are too near for a cross each, every row and
    /// every column has it at the same one, so that crosses that are true stand in straight lines.</summary>
    private void Crosses()
    {
        var taken = marks.Select(mark => Extent.Of(mark, ruler)).ToList();
        var points = Enumerable.Range(1, sheet.Places).Select(place => Points(sheet.AreaAt(place)).ToArray()).ToArray();
        var (across, down) = (Lines([.. points.Select(p => p.Select(at => at.X))]), Lines([.. points.Select(p => p.Select(at => at.Y))]));
        foreach (var corners in points)
        {
            foreach (var (x, y) in corners.Where(at => IsOn(across, at.X) && IsOn(down, at.Y)))
            {
                var room = new Extent(x - Arm, y - Arm, x + Arm, y + Arm);
                if (taken.Any(other => other.Over(room) > 0))
                    continue;
                Bar(x - Arm, y - (Line / 2), 2 * Arm, Line);
                Bar(x - (Line / 2), y - Arm, Line, 2 * Arm);
                taken.Add(room);
            }
        }
    }

    // Along one way, the lines that crosses stand on: the first label's first and the last label's last, then near edges before far ones.
    private static List<double> Lines(IReadOnlyList<IEnumerable<double>> places)
    {
        var lines = new List<double>();
        foreach (var at in (double[])[places[0].Min(), places[^1].Max(), .. places.Select(p => p.Min()).Order(), .. places.SelectMany(p => p).Order()])
        {
            if (lines.TrueForAll(line => Math.Abs(line - at) >= 2 * Arm))
                lines.Add(at);
        }

        return lines;
    }

    private static bool IsOn(List<double> lines, double at) => lines.Exists(line => Math.Abs(line - at) < Same);

    private IEnumerable<(double X, double Y)> Points(LabelArea area)
    {
        var inside = IsRoll ? InsideRoll : 0;
        var (left, top, right, bottom) = (area.X + inside, area.Y + inside, area.X + area.Width - inside, area.Y + area.Height - inside);
        var (middle, half) = ((left + right) / 2, (top + bottom) / 2);
        return area.Shape == LabelShape.Round
            ? [(middle, top), (right, half), (middle, bottom), (left, half)]
            : [(left, top), (right, top), (left, bottom), (right, bottom)];
    }

    private IEnumerable<string> Wrapped(string sentence, double width, double points)
    {
        var line = "";
        foreach (var word in sentence.Split(' '))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && ruler.Width(longer, Face.Regular, points) > width)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private void Bar(double x, double y, double width, double height) => marks.Add(new BarMark("ruler", x, y, width, height, Ink.Black));

    private void Text(double x, double baseline, string text, Face face, double points) => marks.Add(new TextMark("words", x, baseline, text, face, points, Ink.Black));

    private void Centered(double x, double baseline, string text, Face face, double points) => Text(x - (ruler.Width(text, face, points) / 2), baseline, text, face, points);

    private static string Number(int at) => at.ToString(CultureInfo.InvariantCulture);

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
