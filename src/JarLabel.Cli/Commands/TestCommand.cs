using System.CommandLine;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Commands;

/// <summary><c>test</c>: how a few drops of a jar dried on glass.</summary>
internal static class TestCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();

    private static readonly Argument<string> Verdict = new("VERDICT")
    {
        Description = "pass when the drops dried hard, fail (or soft) when they stayed soft or tacky; fresh when they dried hard as fast as a fresh batch beside them, slow when hard but clearly slower.",
    };

    private static readonly Option<string> DryMinutes = Minutes("--dry-minutes", "How long they took to dry.");
    private static readonly Option<string> TackFree = Minutes("--tack-free", "Minutes until a finger no longer sticks.");
    private static readonly Option<string> PrintFree = Minutes("--print-free", "Minutes until cloth pressed on it leaves no print.");
    private static readonly Option<string> FreshTackFree = Minutes("--fresh-tack-free", "The same of a fresh batch beside it; with it, pass means fresh or slow by the minutes.");
    private static readonly Option<string> FreshPrintFree = Minutes("--fresh-print-free", "The same of a fresh batch beside it.");
    private static readonly Option<string> Temperature = new("--temp") { Description = "Temperature at the bench: 68F, \"20 C\".", HelpName = "temperature" };
    private static readonly Option<string> Humidity = new("--humidity") { Description = "Relative humidity in %: 55.", HelpName = "percent" };
    private static readonly Option<string> Film = new("--film") { Description = "What they were put on and how thick: \"glass, 1 coat\".", HelpName = "text" };

    internal static Command Create(Runner runner) => runner.Runs(
        new Command("test", "Record how a few drops dried on glass.") { Jar, Verdict, DryMinutes, TackFree, PrintFree, FreshTackFree, FreshPrintFree, Temperature, Humidity, Film }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        var dried = typed.Needed(Verdict, Words.Verdict);
        var minutes = Read(typed, DryMinutes);
        var readings = new DropReadings
        {
            TackFreeMinutes = Read(typed, TackFree),
            PrintFreeMinutes = Read(typed, PrintFree),
            FreshTackFreeMinutes = Read(typed, FreshTackFree),
            FreshPrintFreeMinutes = Read(typed, FreshPrintFree),
            Temperature = typed.Value(Temperature, TemperatureText.Read),
            HumidityPercent = typed.Value(Humidity, Words.WholeNumber(1, 100, 55)),
            Film = typed.Fact(Film, Words.PrintedUpTo(60)),
        };
        return typed.Then(() => TestJar.Do(session.Workbench, number, dried, minutes, readings).Then<Answer>(outcome => JarAnswer.Changed(session.Workbench, outcome)));
    }

    private static Option<string> Minutes(string name, string says) => new(name) { Description = says, HelpName = "minutes" };

    private static int? Read(Typed typed, Option<string> option) => typed.Value(option, Words.WholeNumber(1, TestJar.LongestMinutes));
}
