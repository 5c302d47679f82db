namespace JarLabel.Layout.Charts;

/// <summary>Where ppm and minutes lie on the paper: ppm by their logarithm, so that a limit for breathing and one for fire, a hundred times
/// higher, can both be read.</summary>
/// <param name="area">Left, top, right and bottom of the plot, mm.</param>
/// <param name="minutes">The length of the axis of time.</param>
/// <param name="lowest">The decade at the bottom: 0 for 1 ppm, 3 for 1000.</param>
/// <param name="highest">The decade at the top.</param>
internal sealed class ChartScale((double Left, double Top, double Right, double Bottom) area, double minutes, int lowest, int highest)
{
    private static readonly double[] Steps = [1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440, 2880, 7200, 14400];

    private const int MostSteps = 8;

    internal int Lowest => lowest;

    internal int Highest => highest;

    internal double X(double minute) => area.Left + ((area.Right - area.Left) * Math.Clamp(minute / minutes, 0, 1));

    /// <summary>What lies below the axis is drawn on it.</summary>
    internal double Y(double ppm)
    {
        var decades = ppm > 0 ? Math.Clamp(Math.Log10(ppm), lowest, highest) : lowest;
        return area.Bottom - ((area.Bottom - area.Top) * (decades - lowest) / (highest - lowest));
    }

    /// <summary>Minutes that get a mark.</summary>
    internal IEnumerable<double> TimeMarks()
    {
        var step = Steps.FirstOrDefault(s => minutes / s <= MostSteps, Steps[^1] * Math.Ceiling(minutes / Steps[^1] / MostSteps));
        for (var minute = 0.0; minute <= minutes * 1.0001; minute += step)
        {
            yield return minute;
        }
    }
}
