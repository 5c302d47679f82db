using JarLabel.Bench;
using JarLabel.Bench.Changing;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;

namespace JarLabel.Web.Forms;

/// <summary><c>test</c>: how a few drops dried on glass.</summary>
internal static class TestForm
{
    internal static BenchForm Form { get; } = new("test", "Test", "Record the test", Fields, Do)
    {
        Says = "A few drops on glass, and beside them a few of a fresh batch: minutes beside its minutes tell more than minutes alone.",
    };

    private static IReadOnlyList<Field> Fields(Workbench bench, Jar? jar) =>
    [
        new("VERDICT", "A few drops on glass")
        {
            Choices =
            [
                ("", "choose"),
                ("pass", "dried hard: pass"),
                ("fresh", "dried hard, as fast as a fresh batch"),
                ("slow", "dried hard, clearly slower than a fresh batch"),
                ("fail", "stayed soft or tacky: fail"),
            ],
        },
        new("--tack-free", "Minutes until tack-free", "a finger no longer sticks; may stay empty"),
        new("--fresh-tack-free", "Fresh batch beside it, tack-free", "minutes; may stay empty"),
        new("--print-free", "Minutes until print-free", "cloth pressed on it leaves no print") { Seldom = true },
        new("--fresh-print-free", "Fresh batch beside it, print-free", "minutes") { Seldom = true },
        new("--dry-minutes", "Minutes until dry", "may stay empty"),
        new("--temp", "Temperature at the bench", "20 C, 68F") { Seldom = true },
        new("--humidity", "Relative humidity, %", "55") { Seldom = true },
        new("--film", "Put on, and how thick", "glass, 1 coat") { Seldom = true },
    ];

    private static Result<BenchOutcome> Do(Workbench bench, JarNumber jar, Entry entry)
    {
        var dried = entry.Needed("VERDICT", "pass", Words.Verdict);
        var minutes = Minutes(entry, "--dry-minutes");
        var readings = new DropReadings
        {
            TackFreeMinutes = Minutes(entry, "--tack-free"),
            PrintFreeMinutes = Minutes(entry, "--print-free"),
            FreshTackFreeMinutes = Minutes(entry, "--fresh-tack-free"),
            FreshPrintFreeMinutes = Minutes(entry, "--fresh-print-free"),
            Temperature = entry.Value("--temp", TemperatureText.Read),
            HumidityPercent = entry.Value("--humidity", Words.WholeNumber(1, 100, 55)),
            Film = entry.Fact("--film", Words.PrintedUpTo(60)),
        };
        return entry.Then(() => TestJar.Do(bench, jar, dried, minutes, readings));
    }

    private static int? Minutes(Entry entry, string where) => entry.Value(where, Words.WholeNumber(1, TestJar.LongestMinutes));
}
