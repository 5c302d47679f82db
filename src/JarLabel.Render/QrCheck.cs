using ZXing.Common;
using ZXing.QrCode.Internal;

namespace JarLabel.Render;

/// <summary>Checks a code before it is printed: another library than the one that made it decodes the very modules that will be drawn.
/// There is no picture to search, so it costs microseconds. Loads neither Skia nor HarfBuzz; may be used from any thread.</summary>
public static class QrCheck
{
    /// <summary>True when the modules say what the payload says.</summary>
    public static bool Agrees(QrModules modules) => string.Equals(Read(modules), modules.Payload, StringComparison.Ordinal);

    /// <summary>What the modules say, or null when they say nothing.</summary>
    public static string? Read(QrModules modules) => new Decoder().decode(Matrix(modules), null)?.Text;

    private static BitMatrix Matrix(QrModules modules)
    {
        var matrix = new BitMatrix(modules.Size);
        for (var row = 0; row < modules.Size; row++)
        {
            for (var column = 0; column < modules.Size; column++)
            {
                if (modules[row, column])
                    matrix[column, row] = true;
            }
        }

        return matrix;
    }
}
