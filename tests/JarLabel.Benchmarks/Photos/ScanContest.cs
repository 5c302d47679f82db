using System.Globalization;

namespace JarLabel.Benchmarks.Photos;

/// <summary>Reading photos as whole processes, <c>scan</c> of the native program against zxing-cpp's own, taking turns. A program that reads nothing is quick: how many
/// codes each told stands beside its time.</summary>
internal static class ScanContest
{
    private const int Rounds = 5;

    internal static void Run(string program)
    {
        var folder = Directory.CreateTempSubdirectory("jarlabel-photos-");
        try
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Photos against ZXingReader; median of {Rounds} runs, {Environment.ProcessorCount} processors"));
            Console.WriteLine(" processor ms        wall ms             peak MB    codes told");
            foreach (var (name, codes, take) in TenPhotos.All)
            {
                var bytes = take();
                var file = Path.Combine(folder.FullName, bytes[0] == 0x89 ? "photo.png" : "photo.jpg");
                File.WriteAllBytes(file, bytes);
                Print(name, codes, Turns(() => PhotoRun.Of(program, "scan", file, "--shop", folder.FullName), () => PhotoRun.Of("ZXingReader", file)));
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static (List<PhotoRun> Ours, List<PhotoRun> Theirs) Turns(Func<PhotoRun> ours, Func<PhotoRun> theirs)
    {
        var (first, second) = (new List<PhotoRun>(), new List<PhotoRun>());
        for (var round = 0; round < Rounds; round++)
        {
            first.Add(ours());
            second.Add(theirs());
        }

        return (first, second);
    }

    // The shop has no jars: each code that was read is told as a jar that is not in its ledger.
    private static void Print(string name, int codes, (List<PhotoRun> Ours, List<PhotoRun> Theirs) runs)
    {
        var (ours, theirs) = runs;
        var read = ours[0].Said.Contains("JL182", StringComparison.Ordinal) ? 0 : Count(ours[0].Said, "error ");
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Median(ours, r => r.Processor),5:0} {Median(theirs, r => r.Processor),5:0} {Ratio(runs, r => r.Processor),5:0.00} x {Median(ours, r => r.Wall),5:0} {Median(theirs, r => r.Wall),5:0} {Ratio(runs, r => r.Wall),5:0.00} x {Median(ours, r => r.Memory),5:0} {Median(theirs, r => r.Memory),5:0}  {read,3} {Count(theirs[0].Said, "Text:"),3} of {codes,2}  {name}"));
    }

    private static double Ratio((List<PhotoRun> Ours, List<PhotoRun> Theirs) runs, Func<PhotoRun, double> what) => Median(runs.Ours, what) / Median(runs.Theirs, what);

    private static double Median(List<PhotoRun> runs, Func<PhotoRun, double> what) => runs.Select(what).Order().ElementAt(runs.Count / 2);

    private static int Count(string text, string word) => text.Split('\n').Count(line => line.StartsWith(word, StringComparison.Ordinal));
}
