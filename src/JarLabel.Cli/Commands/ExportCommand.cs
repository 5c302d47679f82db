using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>export</c>: all events as JSON Lines.</summary>
internal static class ExportCommand
{
    private static readonly Argument<string> Target = new("FILE") { Description = "The file to write: shop.jsonl." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("export", "Write every event as one line of JSON, for another program or another shop folder.") { Target, SharedOptions.Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.File(Target).Then(file => LedgerCare.Export(session.Workbench, file)).Then<Answer>(report => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(session.Workbench.DryRun ? "would be" : "are")} in {report.File}")),
        new ExportAnswerJson(report.File, report.Events),
        c => c.ExportAnswerJson));
}
