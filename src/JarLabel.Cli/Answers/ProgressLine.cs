using System.Diagnostics;

namespace JarLabel.Cli.Answers;

/// <summary>One line that is written over as a long piece of work goes on, and cleared at its end. Short work never shows it.</summary>
internal sealed class ProgressLine(TextWriter errors, string what)
{
    private const int Width = 24;
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Pace = TimeSpan.FromMilliseconds(100);

    private readonly long since = Stopwatch.GetTimestamp();
    private TimeSpan told;

    /// <summary>So many are done of so many; may be called on any thread, by one at a time.</summary>
    internal void Tell(int done, int of)
    {
        var now = Stopwatch.GetElapsedTime(since);
        if (done >= of)
        {
            errors.Write(told > TimeSpan.Zero ? "\r\e[K" : "");
            errors.Flush();
        }
        else if (now > Patience && now - told > Pace)
        {
            told = now;
            var full = (int)((long)Width * done / of);
            errors.Write(string.Create(CultureInfo.InvariantCulture, $"\r  [{new string('#', full)}{new string('.', Width - full)}] {done} of {of} {what}\e[K"));
            errors.Flush();
        }
    }
}
