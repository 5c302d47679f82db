namespace JarLabel.Tests.Layout.Codes;

/// <summary>Reads the codewords of a version 1 code from its modules, in the order ISO/IEC 18004 section 7.7.3 places them: two columns at
/// a time from the right, upwards and downwards in turn, without the timing column. Written apart from the encoder under test.</summary>
internal static class QrCodewords
{
    private const int Side = 21;

    internal static IReadOnlyList<byte> Of(QrModules modules)
    {
        var mask = MaskOf(modules);
        var bits = Path().Select(at => modules[at.Row, at.Column] ^ Masked(mask, at.Row, at.Column)).ToList();
        return [.. bits.Chunk(8).Select(eight => (byte)eight.Aggregate(0, (sum, bit) => (sum << 1) | (bit ? 1 : 0)))];
    }

    private static IEnumerable<(int Row, int Column)> Path()
    {
        var upwards = true;
        for (var right = Side - 1; right > 0; right -= 2)
        {
            if (right == 6)
                right--;
            foreach (var step in Enumerable.Range(0, Side))
            {
                var row = upwards ? Side - 1 - step : step;
                foreach (var column in new[] { right, right - 1 })
                {
                    if (IsData(row, column))
                        yield return (row, column);
                }
            }

            upwards = !upwards;
        }
    }

    private static bool IsData(int row, int column)
    {
        var corner = (row < 9 && column < 9) || (row < 9 && column >= Side - 8) || (row >= Side - 8 && column < 9);
        return !corner && row != 6 && column != 6;
    }

    // Bits 12 to 10 of the format information, masked with 101 there (Annex C).
    private static int MaskOf(QrModules modules) =>
        ((modules[8, 2] ? 4 : 0) | (modules[8, 3] ? 2 : 0) | (modules[8, 4] ? 1 : 0)) ^ 0b101;

    private static bool Masked(int mask, int row, int column) => mask switch
    {
        0 => (row + column) % 2 == 0,
        1 => row % 2 == 0,
        2 => column % 3 == 0,
        3 => (row + column) % 3 == 0,
        4 => ((row / 2) + (column / 3)) % 2 == 0,
        5 => (row * column % 2) + (row * column % 3) == 0,
        6 => ((row * column % 2) + (row * column % 3)) % 2 == 0,
        _ => (((row + column) % 2) + (row * column % 3)) % 2 == 0,
    };
}
