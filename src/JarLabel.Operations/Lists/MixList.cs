using JarLabel.Operations.Steps;

namespace JarLabel.Operations.Lists;

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
        if (!ListFile.Read(list, BatchRow.Columns, BatchRow.Needed).Then(rows => Begin(bench, rows)).TryGet(out var batches, out var faults)
            || !LabelComposer.Open(bench).TryGet(out var composer, out faults)
            || !composer.Choose(choice ?? new LabelChoice()).TryGet(out var stock, out faults))
        {
            return faults;
        }

        return LedgerAccess.Record(bench, step =>
        {
            var recorded = ShopLives.Of(bench, step).Then(lives => Record(bench, step, batches, lives, choice?.Copies ?? 1));
            if (choice is null || !recorded.TryGet(out var mixed, out _))
            {
                return recorded;
            }

            var run = new LabelRun(bench, step, composer, stock, choice.Start, progress);
            return LabelJars.Affordable(mixed.Pick).Then(pick => run.Write(pick, file)).Then<MixedList>(labels => mixed with { Labels = labels });
        });
    }

    private static Result<IReadOnlyList<ListedBatch>> Begin(Workbench bench, IReadOnlyList<ListRow> rows) => Results.All(rows.Select(row =>
    {
        var (request, copies) = (BatchRow.Request(bench, row), BatchRow.Copies(row));
        return row.Then(() => MixJar.Begin(bench, request, new FromSupplies(null, null))).Then<ListedBatch>(mixed => new ListedBatch(request, mixed, copies));
    }));

    private static Result<MixedList> Record(Workbench bench, LedgerStep step, IReadOnlyList<ListedBatch> batches, LearnedLives lives, int copies)
    {
        var (mixed, counted, cautions) = (new List<Jar>(), new List<JarCopies>(), new List<Problem>());
        var said = new List<(Problem Caution, JarNumber Jar)>();
        foreach (var (request, begun, own) in batches)
        {
            if (!Recorder.ForNewJar(step).Append(MixJar.Dated(bench, step, begun, lives)).TryGet(out var history, out var problems))
            {
                return Result<MixedList>.Failed(problems);
            }

            mixed.Add(history.Jar);
            counted.Add(new JarCopies(history.Jar.Number.Value, own ?? copies));
            said.AddRange(JarCautions.Of(bench, history.Jar, JarWords.Hazards(bench, history.Jar)).Select(caution => (caution, history.Jar.Number)));
        }

        cautions.AddRange(step.Cautions);
        cautions.AddRange(said.GroupBy(one => one.Caution, one => one.Jar).Select(one => Named(one.Key, [.. one], mixed.Count)));
        cautions.AddRange(mixed.GroupBy(jar => jar.Shelf, StringComparer.Ordinal).SelectMany(shelf => ShelfCautions.With(bench, step, shelf.Key, [.. shelf])));
        return new MixedList(new JarPick(counted, []), [.. cautions.Distinct()]);
    }

    /// <summary>A caution with the jars that it is of, where it is not of all.</summary>
    private static Problem Named(Problem caution, IReadOnlyList<JarNumber> jars, int all) =>
        jars.Count == all ? caution : caution with { Text = Message.Of($"{(jars.Count == 1 ? "Jar" : "Jars")} {string.Join(", ", jars)}: {caution.Text}") };

    /// <summary>A row of the list, worked out.</summary>
    /// <param name="Request">What it asks for.</param>
    /// <param name="Begun">The batch, with the dates of published claims.</param>
    /// <param name="Copies">How many labels; null for as many as of the others.</param>
    private sealed record ListedBatch(MixRequest Request, Mixed Begun, int? Copies);
}

/// <summary>One row of a list of batches: its columns are the fields of <c>mix</c>, read as that step reads them.</summary>
internal static class BatchRow
{
    /// <summary>All columns there are. Bags and bottles are drawn from one batch at a time.</summary>
    internal static IReadOnlyList<string> Columns => field ??= [.. MixStep.Request.Fields.Select(one => one.Name).Except([Shared.Bag.Field.Name, Shared.Bottle.Field.Name]), JarList.Copies];

    /// <summary>Columns there must be; beside them one that says how much.</summary>
    internal static IReadOnlyList<string> Needed => field ??= [.. MixStep.Request.Fields.Where(one => one.IsNeeded).Select(one => one.Name)];

    /// <summary>How many labels the jar gets.</summary>
    internal static int? Copies(ListRow row) => row.Value(JarList.Copies, ValueReader.WholeNumber(1, JarList.MostCopies));

    /// <summary>The batch as it is wanted; faults stay with the row.</summary>
    internal static MixRequest Request(Workbench bench, ListRow row) => row.Read(bench, MixStep.Request);
}

/// <summary>A list of jars on record that want labels: columns <c>jar</c>, and <c>copies</c> where it is not one. A jar in several rows gets
/// the copies of all of them.</summary>
public static class JarList
{
    /// <summary>Most labels of one jar.</summary>
    public const int MostCopies = 1000;

    /// <summary>Name of the column that says how many labels.</summary>
    internal const string Copies = "copies";

    private const string Jar = "jar";

    /// <summary>The jars, or every problem of every row with its line.</summary>
    public static Result<IReadOnlyList<JarWish>> Read(string file) => ListFile.Read(file, [Jar, Copies], [Jar]).Then(rows =>
    {
        var wishes = rows.Select(row => new JarWish(row.Needed(Jar, "142 or 150..160", JarSpan.Read), row.Value(Copies, ValueReader.WholeNumber(1, MostCopies)), $"{row.Where}, {Jar}") { AddsUp = true }).ToArray();
        Problem[] problems = [.. rows.SelectMany(row => row.Problems)];
        return problems.Length > 0 ? Result<IReadOnlyList<JarWish>>.Failed(problems) : Result<IReadOnlyList<JarWish>>.Of(wishes);
    });
}

/// <summary>The jars that were mixed by a list.</summary>
public sealed record MixedList
{
    internal MixedList(JarPick pick, IReadOnlyList<Problem> cautions) => (Pick, Cautions) = (pick, cautions);

    /// <summary>What went through but should be known, each once.</summary>
    public IReadOnlyList<Problem> Cautions { get; }

    /// <summary>Their labels, if any were written.</summary>
    public WrittenLabels? Labels { get; init; }

    /// <summary>The new jars in the order of the rows.</summary>
    public IEnumerable<JarNumber> Jars => Pick.Jars.Select(jar => JarNumber.From(jar.Jar));

    internal JarPick Pick { get; }
}
