using ZXing.Common;
using ZXing.QrCode.Internal;

namespace JarLabel.Render.Reading;

/// <summary>Reads the modules of a code where it lies in a photo, and what they say.</summary>
internal static class ModuleReader
{
    /// <summary>Black and white are told apart by the modules so far around.</summary>
    private const int Around = 4;

    /// <summary>How far from its middle a module is looked at as well.</summary>
    private const float Off = 0.18f;

    private static readonly Decoder Decoder = new();

    /// <summary>What the code there says; null when that cannot be made out.</summary>
    internal static string? Read(PhotoView view, CodePlace place)
    {
        var light = Light(view, place);
        return TextOf(Modules(light, place.Size)) ?? TextOf(Modules(Sharp(light, place.Size), place.Size));
    }

    private static string? TextOf(BitMatrix modules) => Decoder.decode(modules, null) is { Text.Length: > 0 } read ? read.Text : null;

    private static float[] Light(PhotoView view, CodePlace place)
    {
        var light = new float[place.Size * place.Size];
        for (var i = 0; i < light.Length; i++)
        {
            var (across, down) = ((i % place.Size) + 0.5f, (i / place.Size) + 0.5f);
            light[i] = (view.At(place.At(across, down))
                + view.At(place.At(across - Off, down - Off)) + view.At(place.At(across + Off, down - Off))
                + view.At(place.At(across - Off, down + Off)) + view.At(place.At(across + Off, down + Off))) / 5;
        }

        return light;
    }

    // What blur has brought from a module's neighbours is taken out again.
    private static float[] Sharp(float[] light, int size)
    {
        const float share = 0.2f;
        var sharp = new float[light.Length];
        for (var i = 0; i < light.Length; i++)
        {
            var (x, y) = (i % size, i / size);
            float At(int column, int row) => light[(Math.Clamp(row, 0, size - 1) * size) + Math.Clamp(column, 0, size - 1)];
            sharp[i] = light[i] + (share * ((4 * light[i]) - At(x - 1, y) - At(x + 1, y) - At(x, y - 1) - At(x, y + 1)));
        }

        return sharp;
    }

    // Between the darkest and the brightest around, each module for itself: light from one side does not matter.
    private static BitMatrix Modules(float[] light, int size)
    {
        var (darkest, brightest) = Extremes(light, light, size, 1, size);
        (darkest, brightest) = Extremes(darkest, brightest, size, size, 1);
        var modules = new BitMatrix(size);
        for (var i = 0; i < light.Length; i++)
            modules[i % size, i / size] = light[i] < (darkest[i] + brightest[i]) / 2;
        return modules;
    }

    // Along lines of modules each so far from the one before, each line from the one before.
    private static (float[] Darkest, float[] Brightest) Extremes(float[] dark, float[] bright, int size, int step, int next)
    {
        var (darkest, brightest) = (new float[dark.Length], new float[bright.Length]);
        for (var line = 0; line < size; line++)
        {
            for (var i = 0; i < size; i++)
            {
                var (least, most) = (float.MaxValue, float.MinValue);
                for (var near = Math.Max(i - Around, 0); near <= Math.Min(i + Around, size - 1); near++)
                {
                    var at = (line * next) + (near * step);
                    (least, most) = (Math.Min(least, dark[at]), Math.Max(most, bright[at]));
                }

                (darkest[(line * next) + (i * step)], brightest[(line * next) + (i * step)]) = (least, most);
            }
        }

        return (darkest, brightest);
    }
}
