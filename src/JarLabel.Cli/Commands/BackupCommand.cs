using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>backup</c>: a whole copy of the ledger while it is in use.</summary>
internal static class BackupCommand
{
    private static readonly Argument<string> Target = new("FILE") { Description = "The file to write: ledger-backup.db." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("backup", "Write a whole copy of the ledger, also while others record; it is read back and checked.") { Target, SharedOptions.Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.File(Target).Then(file => LedgerCare.Backup(session.Workbench, file)).Then<Answer>(report => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(session.Workbench.DryRun ? "would be copied" : "copied")} to {report.File} and read back")),
        new BackupAnswerJson(report.File, report.Events, report.LedgerId),
        c => c.BackupAnswerJson));
}
