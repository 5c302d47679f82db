namespace JarLabel.Layout.Codes;

/// <summary>A code in signs of half a line, two rows of modules in one line of text, with its quiet zone: for a screen that shows dark signs on
/// a light ground.</summary>
public static class QrText
{
    /// <summary>The lines, all of one length.</summary>
    public static IReadOnlyList<string> Lines(QrModules code)
    {
        var side = code.Size + (2 * QrEncoder.QuietZone);
        return [.. Enumerable.Range(0, (side + 1) / 2).Select(line => string.Concat(Enumerable.Range(0, side).Select(column => Sign(code, 2 * line, column))))];
    }

    private static char Sign(QrModules code, int row, int column) => (Dark(code, row, column), Dark(code, row + 1, column)) switch
    {
        (true, true) => '█',
        (true, false) => '▀',
        (false, true) => '▄',
        _ => ' ',
    };

    private static bool Dark(QrModules code, int row, int column)
    {
        var (y, x) = (row - QrEncoder.QuietZone, column - QrEncoder.QuietZone);
        return y >= 0 && x >= 0 && y < code.Size && x < code.Size && code[y, x];
    }
}
