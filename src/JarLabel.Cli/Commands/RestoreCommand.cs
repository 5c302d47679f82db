using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>restore</c>: a copy of a backup in the ledger's place.</summary>
internal static class RestoreCommand
{
    private static readonly Argument<string> Source = new("FILE") { Description = "What \"jarlabel backup\" wrote." };
    private static readonly Option<bool> Force = new("--force") { Description = "Also in the place of a ledger that is in order; it is kept under another name." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("restore", "Put a backup in the ledger's place: it is checked first, and what stood there is kept under another name.") { Source, Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.File(Source).Then(file => LedgerCare.Restore(session.Workbench, file, typed.Switch(Force))).Then<Answer>(report => Answer.Of(
        new Screen()
            .Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events of {report.File} {(session.Workbench.DryRun ? "would be" : "are")} the ledger"))
            .Rows(report.Aside.Select(kept => (session.Workbench.DryRun ? "would be kept aside" : "kept aside", (string?)kept))),
        new RestoreAnswerJson(report.File, report.Events, report.LedgerId, report.Aside, report.Cautions),
        c => c.RestoreAnswerJson,
        report.Cautions));
}
