using JarLabel.Operations.Demo;
using JarLabel.Store.Checking;
using JarLabel.Store.Exchange;

namespace JarLabel.Operations.Answers;

/// <summary>What is said of copies of the ledger and of its being whole.</summary>
internal static class CareAnswer
{
    internal static Answer Of(Workbench bench, BackupReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(bench.DryRun ? "would be copied" : "copied")} to {report.File} and read back")).Rows(("with them", Named(report.Files))),
        new BackupAnswerJson(report.File, report.Events, report.LedgerId) { Files = report.Files },
        c => c.BackupAnswerJson);

    /// <summary>The shop's own files by name, printed ones counted.</summary>
    private static string? Named(IReadOnlyList<string> files)
    {
        string[] own = [.. files.Where(file => !file.StartsWith("labels/", StringComparison.Ordinal))];
        string[] printed = files.Count > own.Length ? [CountWords.Of(files.Count - own.Length, "printed file")] : [];
        return files.Count == 0 ? null : string.Join(", ", own.Concat(printed));
    }

    internal static Answer Of(Workbench bench, ExportReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events {(bench.DryRun ? "would be" : "are")} in {report.File}")),
        new ExportAnswerJson(report.File, report.Events),
        c => c.ExportAnswerJson);

    internal static Answer Of(Workbench bench, ImportReport report, IReadOnlyList<Problem> cautions) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{report.Added} events {(bench.DryRun ? "would be taken" : "taken")}; {report.Known} were here already")),
        tell => new ImportAnswerJson(report.Added, report.Known, tell(cautions)),
        c => c.ImportAnswerJson,
        cautions);

    internal static Answer Of(Workbench bench, RestoreReport report) => Answer.Of(
        new Screen()
            .Title(string.Create(CultureInfo.InvariantCulture, $"{report.Events} events of {report.File} {(bench.DryRun ? "would be" : "are")} the ledger"))
            .Rows(
            [
                .. report.Aside.Select(kept => (bench.DryRun ? "would be kept aside" : "kept aside", (string?)kept)),
                (bench.DryRun ? "would come with it" : "came with it", Named(report.Brought)),
                ("stands here otherwise, stayed", Named(report.Stayed)),
            ]),
        tell => new RestoreAnswerJson(report.File, report.Events, report.LedgerId, report.Aside, tell(report.Cautions)) { Brought = report.Brought, Stayed = report.Stayed },
        c => c.RestoreAnswerJson,
        report.Cautions);

    internal static Answer Of(Workbench bench, VerifyReport report) => Answer.Of(
        new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"Sound: {report.Events} events, {report.Jars} jars, {report.Files} written files")),
        tell => new VerifyAnswerJson(report.Events, report.Jars, report.Files, tell(report.Notices)),
        c => c.VerifyAnswerJson,
        report.Notices);

    internal static Answer Of(CheckedFiles files) => Answer.Of(
        new Screen().Title($"{CountWords.Of(files.Count, "file")} of the shop's own read with ours; nothing is wrong with {(files.Count == 1 ? "it" : "them")}."),
        tell => new CheckAnswerJson(files.Count, tell(files.Cautions)),
        c => c.CheckAnswerJson,
        files.Cautions);

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
internal sealed record BackupAnswerJson(string File, long Events, string Ledger)
{
    /// <summary>The shop's own files in it.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];
}

/// <summary>What <c>demo</c> says to a program.</summary>
internal sealed record DemoAnswerJson(string Folder, int Jars, IReadOnlyList<string> Files, string Until);

/// <summary>What <c>export</c> says to a program.</summary>
internal sealed record ExportAnswerJson(string File, long Events);

/// <summary>What <c>import</c> says to a program.</summary>
internal sealed record ImportAnswerJson(long Added, long Known, IReadOnlyList<Core.Problem> Warnings);

/// <summary>What <c>restore</c> says to a program.</summary>
internal sealed record RestoreAnswerJson(string File, long Events, string Ledger, IReadOnlyList<string> Aside, IReadOnlyList<Core.Problem> Warnings)
{
    /// <summary>The shop's own files that came with it.</summary>
    public IReadOnlyList<string> Brought { get; init; } = [];

    /// <summary>Those that stand here otherwise, and stayed.</summary>
    public IReadOnlyList<string> Stayed { get; init; } = [];
}

/// <summary>What <c>verify</c> says to a program.</summary>
internal sealed record VerifyAnswerJson(long Events, int Jars, int Files, IReadOnlyList<Core.Problem> Warnings);
