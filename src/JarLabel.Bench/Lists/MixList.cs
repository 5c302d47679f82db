using JarLabel.Bench.Changing;
using JarLabel.Bench.Keeping;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Labels.Many;
using JarLabel.Bench.Mixing;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Recording;
using JarLabel.Bench.Supplies;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Store;

namespace JarLabel.Bench.Lists;

/// <summary>Mixes a list of batches, one row a jar, for a class or a supplier: all of them with their labels in one file, or none.</summary>
public static class MixList
{
    /// <summary>The jars and their labels, or every problem of every row with its line; then nothing was recorded and nothing written.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="list">The list.</param>
    /// <param name="choice">Which label; null for none.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    /// <param name="progress">Told how many labels of how many are placed.</param>
    public static Result<MixedList> Do(Workbench bench, string list, LabelChoice? choice, string? file, Action<int, int>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return ListFile.Read(list, BatchRow.Columns, BatchRow.Needed).Then(rows => Begin(bench, rows)).Then(batches => LabelPress.Open(bench).Then(press =>
            press.Choose(choice ?? new LabelChoice()).Then(stock => LedgerDesk.Record(bench, step => ShopLives.Of(bench, step).Then(lives => Record(bench, step, batches, lives, choice?.Copies ?? 1)).Then(mixed => choice is null
                ? mixed
                : LabelJars.Affordable(mixed.Pick).Then(pick => new LabelRun(bench, step, press, stock, choice.Start, progress).Write(pick, file)).Then<MixedList>(labels => mixed with { Labels = labels }))))));
    }

    private static Result<IReadOnlyList<ListedBatch>> Begin(Workbench bench, IReadOnlyList<ListRow> rows)
    {
        var results = rows.Select(row =>
        {
            var (request, copies) = (BatchRow.Request(bench, row), BatchRow.Copies(row));
            return row.Then(() => MixJar.Begin(bench, request, new FromSupplies(null, null))).Then<ListedBatch>(mixed => new ListedBatch(request, mixed, copies));
        }).ToArray();
        Problem[] problems = [.. results.SelectMany(result => result.Problems)];
        return problems.Length > 0
            ? Result<IReadOnlyList<ListedBatch>>.Failed(problems)
            : Result<IReadOnlyList<ListedBatch>>.Of([.. results.Select(result => result.Require())]);
    }

    private static Result<MixedList> Record(Workbench bench, LedgerStep step, IReadOnlyList<ListedBatch> batches, LearnedLives lives, int copies)
    {
        var (mixed, counted, cautions) = (new List<Jar>(), new List<JarCopies>(), new List<Problem>());
        foreach (var (request, begun, own) in batches)
        {
            if (!Recorder.ForNewJar(step).Append(MixJar.Dated(bench, request, begun, lives)).TryGet(out var history, out var problems))
            {
                return Result<MixedList>.Failed(problems);
            }

            mixed.Add(history.Jar);
            counted.Add(new JarCopies(history.Jar.Number.Value, own ?? copies));
            cautions.AddRange(JarCautions.Of(bench, history.Jar, JarWords.Hazards(bench, history.Jar)));
        }

        cautions.InsertRange(0, step.Cautions);
        cautions.AddRange(mixed.GroupBy(jar => jar.Shelf, StringComparer.Ordinal).SelectMany(shelf => ShelfCautions.With(bench, step, shelf.Key, [.. shelf])));
        return new MixedList(new JarPick(counted, []), [.. cautions.Distinct()]);
    }

    /// <summary>A row of the list, worked out.</summary>
    /// <param name="Request">What it asks for.</param>
    /// <param name="Begun">The batch, with the dates of published claims.</param>
    /// <param name="Copies">How many labels; null for as many as of the others.</param>
    private sealed record ListedBatch(MixRequest Request, Mixed Begun, int? Copies);
}
