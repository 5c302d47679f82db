using System.Diagnostics;
using System.Runtime.InteropServices;

namespace JarLabel.Benchmarks.Photos;

/// <summary>One run of a whole process: its processor time and how long it took, ms; its largest memory, MB; and what it said.</summary>
internal sealed partial record PhotoRun(double Processor, double Wall, double Memory, string Said)
{
    private const int Children = -1;

    internal static PhotoRun Of(string program, params string[] arguments)
    {
        var before = ChildrenTime();
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (said, complained) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        var memory = 0.0;
        while (!process.WaitForExit(5))
            memory = Math.Max(memory, Largest(process.Id));
        process.WaitForExit();
        var wall = clock.Elapsed.TotalMilliseconds;
        return new PhotoRun(ChildrenTime() - before, wall, memory, said.GetAwaiter().GetResult() + complained.GetAwaiter().GetResult());
    }

    // The largest so far, as Linux keeps it.
    private static double Largest(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], System.Globalization.CultureInfo.InvariantCulture) / 1024;
        }
        catch (IOException)
        {
            return 0;
        }
    }

    // Seconds and microseconds in the program, then in the system.
    private static double ChildrenTime()
    {
        Span<long> usage = stackalloc long[32];
        _ = Usage(Children, ref MemoryMarshal.GetReference(usage));
        return ((usage[0] + usage[2]) * 1e3) + ((usage[1] + usage[3]) / 1e3);
    }

    [LibraryImport("libc", EntryPoint = "getrusage")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Usage(int who, ref long usage);
}
