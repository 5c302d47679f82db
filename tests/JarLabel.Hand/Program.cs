using System.Diagnostics;
using System.Globalization;
using JarLabel.Core;
using JarLabel.Hand;
using JarLabel.Store;
using JarLabel.Store.Shops;

// A hand at the bench in a process of its own, for the tests that kill it or let several work at once.
//   work DIR STEPS SECONDS   mixes and thins in turn; tells each accepted step on a line: "mixed JAR" or "thinned JAR REVISION"
//   hold DIR SECONDS         keeps the write lock
//   fill DIR JARS            adds so many jars of five events each, without labels
//   measure DIR ROUNDS       tells the median time of the everyday things in microseconds
//   lines PROGRAM CASES ANSWERS  gives the program command lines and writes down how each ended
//   jar DIR JAR              opens, looks one jar up, and ends: what a whole process costs

if (args[0] == "lines")
{
    return Lines.Run(args[1], args[2], args[3]);
}

var folder = ShopFolder.At(args[1]).Require();
return args[0] switch
{
    "work" => Work(int.Parse(args[2], CultureInfo.InvariantCulture), double.Parse(args[3], CultureInfo.InvariantCulture)),
    "hold" => Hold(double.Parse(args[2], CultureInfo.InvariantCulture)),
    "fill" => BigShop.Fill(folder, int.Parse(args[2], CultureInfo.InvariantCulture)),
    "measure" => BigShop.Measure(folder, int.Parse(args[2], CultureInfo.InvariantCulture)),
    "jar" => BigShop.Jar(folder, int.Parse(args[2], CultureInfo.InvariantCulture)),
    _ => 2,
};

int Work(int steps, double seconds)
{
    var opened = Ledger.Open(folder, LedgerMode.Write, new PlainJars());
    if (!opened.TryGet(out var ledger, out var problems))
    {
        return Tell(problems);
    }

    using (ledger)
    {
        var since = Stopwatch.GetTimestamp();
        for (var i = 0; i < steps && Stopwatch.GetElapsedTime(since).TotalSeconds < seconds; i++)
        {
            var mixed = BenchWork.Mix(ledger);
            if (!mixed.TryGet(out var jar, out problems))
            {
                return Tell(problems);
            }

            Say($"mixed {jar}");
            if (!BenchWork.Thin(ledger, jar).TryGet(out var revision, out problems))
            {
                return Tell(problems);
            }

            Say($"thinned {jar} {revision}");
        }
    }

    return 0;
}

int Hold(double seconds)
{
    using var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require();
    ledger.Record<int>(step =>
    {
        Say($"holding");
        Thread.Sleep(TimeSpan.FromSeconds(seconds));
        return 1;
    });
    return 0;
}

static int Tell(IReadOnlyList<Problem> problems)
{
    foreach (var problem in problems)
    {
        Say($"problem {problem.Code} {problem.Message}");
    }

    return 2;
}

static void Say(FormattableString line)
{
    Console.Out.WriteLine(line.ToString(CultureInfo.InvariantCulture));
    Console.Out.Flush();
}
