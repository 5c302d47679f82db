namespace JarLabel.Operations.Answers;

/// <summary>A small picture of a sheet in letters: the paper, the labels on it, each with its place.</summary>
internal static class SheetDrawing
{
    private const int Columns = 44;

    /// <summary>The lines of the picture. A letter is twice as high as wide.</summary>
    internal static IEnumerable<string> Of(Sheet sheet)
    {
        var across = Math.Max(sheet.PaperWidth, sheet.PaperHeight * 0.8) / Columns;
        var (wide, high) = (At(sheet.PaperWidth, across), At(sheet.PaperHeight, 2 * across));
        var letters = Enumerable.Range(0, high + 1).Select(_ => new StringBuilder(new string(' ', wide + 1))).ToArray();
        Box(letters, 0, 0, wide, high, '+');
        for (var place = 1; place <= sheet.Places && sheet.Places > 1; place++)
        {
            Label(letters, sheet.AreaAt(place), place, across);
        }

        return letters.Select(line => line.ToString().TrimEnd());
    }

    private static int At(double length, double scale) => (int)Math.Round(length / scale);

    private static void Label(StringBuilder[] letters, LabelArea area, int place, double across)
    {
        var (left, top) = (Math.Max(1, At(area.X, across)), Math.Max(1, At(area.Y, 2 * across)));
        var (right, bottom) = (Math.Min(letters[0].Length - 2, At(area.X + area.Width, across) - 1), Math.Min(letters.Length - 2, At(area.Y + area.Height, 2 * across) - 1));
        for (var line = top; line <= bottom; line++)
        {
            letters[line][left] = area.Shape == LabelShape.Round ? '(' : '[';
            letters[line][right] = area.Shape == LabelShape.Round ? ')' : ']';
        }

        var number = place.ToString(CultureInfo.InvariantCulture);
        var start = ((left + right) / 2) - (number.Length / 2);
        for (var i = 0; i < number.Length && start + i < right; i++)
        {
            letters[(top + bottom) / 2][start + i] = number[i];
        }
    }

    private static void Box(StringBuilder[] letters, int left, int top, int right, int bottom, char corner)
    {
        for (var x = left; x <= right; x++)
        {
            letters[top][x] = letters[bottom][x] = '-';
        }

        for (var y = top; y <= bottom; y++)
        {
            letters[y][left] = letters[y][right] = y == top || y == bottom ? corner : '|';
        }
    }
}
