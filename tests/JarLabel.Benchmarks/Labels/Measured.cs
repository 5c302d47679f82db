using System.Globalization;

namespace JarLabel.Benchmarks.Labels;

/// <summary>One run of one contestant in a process of its own.</summary>
/// <param name="Milliseconds">Wall time of the run, after a small run to warm up.</param>
/// <param name="Processor">Processor time of the run, all threads, ms.</param>
/// <param name="Allocated">Managed memory allocated in the run, MB.</param>
/// <param name="Peak">Largest working set of the process, MB.</param>
/// <param name="Bytes">Size of the file.</param>
internal sealed record Measured(double Milliseconds, double Processor, double Allocated, double Peak, long Bytes)
{
    internal static Measured Parse(string line)
    {
        var parts = line.Split(' ');
        return new Measured(Number(parts[0]), Number(parts[1]), Number(parts[2]), Number(parts[3]), (long)Number(parts[4]));
    }

    internal string Line => string.Create(CultureInfo.InvariantCulture, $"{Milliseconds} {Processor} {Allocated} {Peak} {Bytes}");

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
