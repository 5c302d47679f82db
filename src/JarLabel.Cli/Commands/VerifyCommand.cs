using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Recording;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>verify</c>: checks the whole shop.</summary>
internal static class VerifyCommand
{
    internal static Command Create(Runner runner) => runner.Runs(new Command("verify", "Check the whole shop: every event's seal, every jar, every written file. Changes nothing."), Run);

    private static Result<Answer> Run(Typed typed, Session session) => LedgerCare.Verify(session.Workbench).Then<Answer>(report => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"Sound: {report.Events} events, {report.Jars} jars, {report.Files} written files")),
        new VerifyAnswerJson(report.Events, report.Jars, report.Files, report.Notices),
        c => c.VerifyAnswerJson,
        report.Notices));
}
