using System.Diagnostics;
using System.Globalization;

namespace JarLabel.Benchmarks.Labels;

/// <summary>Many labels in one PDF: JarLabel against the floor and against PDFsharp. A plain timed harness, because a run takes seconds,
/// and because peak memory belongs to a process: each run has its own, warmed up by a small run, the contestants taking turns.</summary>
internal static class Contest
{
    internal const string Child = "--run";
    private const int Rounds = 5;
    private const int WarmUp = 600;

    private static readonly Dictionary<string, Action<int, string>> Contestants = new()
    {
        ["floor"] = FloorRun.Draw,
        ["JarLabel"] = JarLabelRun.Draw,
        ["PDFsharp"] = PdfSharpRun.Draw,
    };

    internal static void Run(int labels)
    {
        var runs = Contestants.Keys.ToDictionary(name => name, _ => new List<Measured>());
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var name in Contestants.Keys)
                runs[name].Add(Start(name, labels));
        }

        Print(labels, runs);
        var few = Start("JarLabel", labels / 5);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"JarLabel's peak memory at {labels / 5:N0} labels: {few.Peak:N0} MB"));
    }

    /// <summary>In the child process: warm up, draw, print the figures.</summary>
    internal static void RunOne(string name, int labels, string file)
    {
        var draw = Contestants[name];
        draw(WarmUp, file);
        using var process = Process.GetCurrentProcess();
        var (processor, allocated, clock) = (process.TotalProcessorTime, GC.GetTotalAllocatedBytes(), Stopwatch.StartNew());
        draw(labels, file);
        var wall = clock.Elapsed.TotalMilliseconds;
        process.Refresh();
        Console.WriteLine(new Measured(
            wall,
            (process.TotalProcessorTime - processor).TotalMilliseconds,
            (GC.GetTotalAllocatedBytes() - allocated) / 1e6,
            process.PeakWorkingSet64 / 1e6,
            new FileInfo(file).Length).Line);
    }

    private static Measured Start(string name, int labels)
    {
        var file = Path.GetTempFileName();
        try
        {
            using var process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [Child, name, labels.ToString(CultureInfo.InvariantCulture), file])
            {
                RedirectStandardOutput = true,
            })!;
            var line = process.StandardOutput.ReadToEnd().Trim();
            process.WaitForExit();
            return Measured.Parse(line);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static void Print(int labels, Dictionary<string, List<Measured>> runs)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{labels:N0} labels, {Content.PerPage} a page; median of {Rounds} runs, {Environment.ProcessorCount} processors"));
        Console.WriteLine("            wall ms  / floor  processor ms  / floor  allocated MB  peak MB   file MB");
        var (floorWall, floorProcessor) = (Median(runs["floor"], run => run.Milliseconds), Median(runs["floor"], run => run.Processor));
        foreach (var (name, measured) in runs)
        {
            var (wall, processor) = (Median(measured, run => run.Milliseconds), Median(measured, run => run.Processor));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name,-10} {wall,8:N0}  {wall / floorWall,7:0.00}  {processor,12:N0}  {processor / floorProcessor,7:0.00}  {Median(measured, run => run.Allocated),12:N0}  {Median(measured, run => run.Peak),7:N0}  {measured[0].Bytes / 1e6,8:0.00}"));
        }
    }

    private static double Median(List<Measured> runs, Func<Measured, double> of) => runs.Select(of).Order().ElementAt(runs.Count / 2);
}
