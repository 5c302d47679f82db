using System.Globalization;

namespace JarLabel.Benchmarks.StartUp;

/// <summary>One label as a whole process, from start to end, as a person at the bench waits for it. A plain timed harness: what is measured
/// is the process, which no benchmark library runs. The programs take turns; each run has an empty folder of its own.</summary>
internal static class StartContest
{
    private const int Rounds = 21;

    internal static void Run(string[] programs)
    {
        Command[] commands = [BarePrograms.PublishNative(), BarePrograms.BuildManaged(), .. programs.Select(Command.Parse)];
        var times = commands.ToDictionary(command => command, _ => new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var command in commands)
                times[command].Add(command.Time());
        }

        Print(commands, times);
    }

    private static void Print(Command[] commands, Dictionary<Command, List<double>> times)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"One label as a whole process; median of {Rounds} runs, {Environment.ProcessorCount} processors"));
        var native = Median(times[commands[0]]);
        foreach (var command in commands)
        {
            var median = Median(times[command]);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{median,7:0} ms  {median / native,5:0.00} x bare native   {command.Name}"));
        }
    }

    private static double Median(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
