using System.Diagnostics;

namespace JarLabel.Benchmarks.StartUp;

/// <summary>A program with its arguments, in which <c>{dir}</c> stands for a fresh, empty folder.</summary>
/// <param name="Name">How it is printed.</param>
/// <param name="Program">The program's path.</param>
/// <param name="Arguments">Its arguments.</param>
internal sealed record Command(string Name, string Program, IReadOnlyList<string> Arguments)
{
    /// <summary>Words are parted by spaces; words with spaces stand in single quotes.</summary>
    internal static Command Parse(string line)
    {
        var words = line.Split('\'').SelectMany((part, i) => i % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList();
        return new Command(line, words[0], words[1..]);
    }

    /// <summary>Runs it once; from start to end, ms. Stops the measurement when it fails: a failing program is quick.</summary>
    internal double Time()
    {
        var folder = Directory.CreateTempSubdirectory("jarlabel-start-");
        try
        {
            var start = new ProcessStartInfo(Program, Arguments.Select(word => word.Replace("{dir}", folder.FullName, StringComparison.Ordinal)))
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            var clock = Stopwatch.StartNew();
            using var process = Process.Start(start)!;
            var complaints = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            var elapsed = clock.Elapsed.TotalMilliseconds;
            return process.ExitCode == 0 ? elapsed : throw new InvalidOperationException($"{Name} ended with {process.ExitCode}: {complaints.GetAwaiter().GetResult()}");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
