namespace JarLabel.Render.Reading;

/// <summary>Brings the edges of a blurred picture out: every dot is moved away from the mean of the dots around it.</summary>
internal static class EdgesOf
{
    private const int Strength = 3;

    /// <summary>The picture with its edges brought out.</summary>
    /// <param name="dots">Brightness, row by row.</param>
    /// <param name="width">Dots in a row.</param>
    /// <param name="reach">How far around a dot the mean is taken, dots.</param>
    internal static byte[] Brought(byte[] dots, int width, int reach)
    {
        var height = dots.Length / width;
        var mean = Mean(Mean(dots, width, 1, height, width, reach), height, width, width, 1, reach);
        var sharp = new byte[dots.Length];
        for (var i = 0; i < dots.Length; i++)
            sharp[i] = (byte)Math.Clamp(dots[i] + (Strength * (dots[i] - mean[i])), 0, 255);
        return sharp;
    }

    // Along lines of so many dots, each dot so far from the one before, each line from the one before.
    private static byte[] Mean(byte[] dots, int length, int step, int lines, int next, int reach)
    {
        var mean = new byte[dots.Length];
        for (var line = 0; line < lines; line++)
        {
            var (start, sum) = (line * next, 0);
            for (var i = -reach; i <= reach; i++)
                sum += dots[start + (Math.Clamp(i, 0, length - 1) * step)];
            for (var i = 0; i < length; i++)
            {
                mean[start + (i * step)] = (byte)(sum / ((2 * reach) + 1));
                sum += dots[start + (Math.Min(i + reach + 1, length - 1) * step)] - dots[start + (Math.Max(i - reach, 0) * step)];
            }
        }

        return mean;
    }
}
