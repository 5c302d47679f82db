using JarLabel.Operations.Demo;
using JarLabel.Store.Checking;
using JarLabel.Store.Exchange;

namespace JarLabel.Operations.Answers;

/// <summary>What is said of copies of the ledger and of its being whole.</summary>
internal static class CareAnswer
{
    internal static Answer Of(Workbench bench, BackupReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(bench.DryRun ? "would be copied" : "copied")} to {report.File} and read back")),
        new BackupAnswerJson(report.File, report.Events, report.LedgerId),
        c => c.BackupAnswerJson);

    internal static Answer Of(Workbench bench, ExportReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(bench.DryRun ? "would be" : "are")} in {report.File}")),
        new ExportAnswerJson(report.File, report.Events),
        c => c.ExportAnswerJson);

    internal static Answer Of(Workbench bench, ImportReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Added} events {(bench.DryRun ? "would be taken" : "taken")}; {report.Known} were here already")),
        new ImportAnswerJson(report.Added, report.Known),
        c => c.ImportAnswerJson);

    internal static Answer Of(Workbench bench, RestoreReport report) => Answer.Of(
        new Screen()
            .Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events of {report.File} {(bench.DryRun ? "would be" : "are")} the ledger"))
            .Rows(report.Aside.Select(kept => (bench.DryRun ? "would be kept aside" : "kept aside", (string?)kept))),
        tell => new RestoreAnswerJson(report.File, report.Events, report.LedgerId, report.Aside, tell(report.Cautions)),
        c => c.RestoreAnswerJson,
        report.Cautions);

    internal static Answer Of(Workbench bench, VerifyReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"Sound: {report.Events} events, {report.Jars} jars, {report.Files} written files")),
        tell => new VerifyAnswerJson(report.Events, report.Jars, report.Files, tell(report.Notices)),
        c => c.VerifyAnswerJson,
        report.Notices);

    internal static Answer Of(Workbench bench, DemoReport report) => Answer.Of(
            new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"An invented year until {DateWords.Of(report.Until)}: {report.Jars} jars")).Gap().Rows(
            [
                ("shop", report.Folder),
                ("printed", string.Create(CultureInfo.InvariantCulture, $"{report.Files.Count} files in labels and previews")),
            ]).Next("shelf", ("shop", report.Folder), ("at", report.Until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))),
            new DemoAnswerJson(report.Folder, report.Jars, report.Files, report.Until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            c => c.DemoAnswerJson);
}

/// <summary>What <c>backup</c> says to a program.</summary>
internal sealed record BackupAnswerJson(string File, long Events, string Ledger);

/// <summary>What <c>demo</c> says to a program.</summary>
internal sealed record DemoAnswerJson(string Folder, int Jars, IReadOnlyList<string> Files, string Until);

/// <summary>What <c>export</c> says to a program.</summary>
internal sealed record ExportAnswerJson(string File, long Events);

/// <summary>What <c>import</c> says to a program.</summary>
internal sealed record ImportAnswerJson(long Added, long Known);

/// <summary>What <c>restore</c> says to a program.</summary>
internal sealed record RestoreAnswerJson(string File, long Events, string Ledger, IReadOnlyList<string> Aside, IReadOnlyList<Core.Problem> Warnings);

/// <summary>What <c>verify</c> says to a program.</summary>
internal sealed record VerifyAnswerJson(long Events, int Jars, int Files, IReadOnlyList<Core.Problem> Warnings);
