namespace JarLabel.Operations.Recording;

/// <summary>Opens the shop's ledger for one thing to do and closes it again.</summary>
public static class LedgerAccess
{
    /// <summary>Records one step, whole or not at all. On a dry run the step is worked out to the end and then dropped.</summary>
    internal static Result<T> Record<T>(Workbench bench, Func<LedgerStep, Result<T>> work)
        where T : notnull => bench.DryRun
            ? ForWriting(bench, ledger => ledger.Rehearse(Traced(bench, work)))
            : With(bench.Folder, LedgerMode.Write, ledger => Told(bench, ledger, ledger.Record(Traced(bench, work))));

    /// <summary>The same result, after which the bench knows which finished files are not in their places yet.</summary>
    private static Result<T> Told<T>(Workbench bench, Ledger ledger, Result<T> result)
        where T : notnull
    {
        if (result.Ok)
        {
            bench.Unmoved = [.. bench.Unmoved, .. ledger.Unmoved];
            bench.Waiting = ledger.Waiting;
        }

        return result;
    }

    /// <summary>The same work, after which the bench knows what it wrote and which places it took.</summary>
    private static Func<LedgerStep, Result<T>> Traced<T>(Workbench bench, Func<LedgerStep, Result<T>> work)
        where T : notnull => step =>
    {
        var result = work(step);
        bench.LastStep = result.Ok ? new StepTrace([.. step.Sheets.Given], [.. step.Files.Select(bench.Folder.Full)]) : null;
        return result;
    };

    /// <summary>Opens the ledger to write. On a dry run where there is none yet, an empty one in memory takes its place.</summary>
    internal static Result<T> ForWriting<T>(Workbench bench, Func<Ledger, Result<T>> work)
        where T : notnull => bench.DryRun && !File.Exists(bench.Folder.Ledger)
            ? With(Ledger.OpenEmpty(bench.Folder, JarReader.Instance), work)
            : With(bench.Folder, LedgerMode.Write, work);

    /// <summary>Looks something up.</summary>
    public static Result<T> Read<T>(Workbench bench, Func<LedgerView, Result<T>> look)
        where T : notnull
    {
        return With(bench.Folder, LedgerMode.Read, ledger => ledger.Read(look));
    }

    /// <summary>One jar with all that happened to it.</summary>
    public static Result<JarHistory> Jar(Workbench bench, JarNumber number) =>
        Read(bench, view => JarHistory.Of(number, view.EventsOf(Subject.Jar(number.Value))).Then(history => LearnedDates.Mark(bench, view, history)));

    internal static Result<T> With<T>(ShopFolder folder, LedgerMode mode, Func<Ledger, Result<T>> use)
        where T : notnull => With(Ledger.Open(folder, mode, JarReader.Instance), use);

    private static Result<T> With<T>(Result<Ledger> opened, Func<Ledger, Result<T>> use)
        where T : notnull
    {
        if (!opened.TryGet(out var ledger, out var problems))
        {
            return Result<T>.Failed(problems);
        }

        using (ledger)
        {
            return use(ledger);
        }
    }
}
