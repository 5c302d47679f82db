using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>import</c>: takes the events of an export.</summary>
internal static class ImportCommand
{
    private static readonly Argument<string> Source = new("FILE") { Description = "What \"jarlabel export\" wrote." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("import", "Take the events of an export: all that are new, or none and every problem.") { Source }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.File(Source).Then(file => LedgerCare.Import(session.Workbench, file)).Then<Answer>(report => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Added} events {(session.Workbench.DryRun ? "would be taken" : "taken")}; {report.Known} were here already")),
        new ImportAnswerJson(report.Added, report.Known),
        c => c.ImportAnswerJson));
}
