namespace JarLabel.Operations.Keeping;

/// <summary>Dates a jar by all that ever happened to it: when each batch in it was mixed, on which shelves that stood, in whatever jars, how warm they were then,
/// and what the shop's drying tests say now.</summary>
internal sealed class JarDating(Workbench bench, LedgerView view, LearnedLives lives)
{
    private readonly JarOrigins origins = Origins(view);

    /// <summary>Finds out whether flakes in a jar were found bad.</summary>
    internal JarsInDoubt Doubts => field ??= JarsInDoubt.Of(bench, view, origins);

    /// <summary>What the tests say.</summary>
    internal LearnedLives Lives => lives;

    /// <summary>Follows jars back through the ledger.</summary>
    internal static JarOrigins Origins(LedgerView view) =>
        new(number => JarHistory.Of(number, view.EventsOf(Subject.Jar(number.Value))).TryGet(out var history, out _) ? history.Life : null);

    /// <summary>The dates of a jar, the most careful of all that is in it; null where the catalog no longer knows its grades. Where a shelf or a jar that it came
    /// from is no longer known, no date is later than on record.</summary>
    internal KeepingDates? Of(JarLife life)
    {
        var jar = life.Jar;
        if (life.Standing.Count == 0)
        {
            return null;
        }

        var batches = origins.Of(life);
        var dates = All((batches ?? AsOldAsTheOldest(life)).SelectMany(b => jar.Held.Solvents.Select(s => Of(b, s.Solvent))));
        if (dates is null)
        {
            return null;
        }

        var ready = dates with { Ready = jar.Dates.Ready };
        return batches?.All(batch => batch.Stays.All(IsKnown)) == true ? ready : jar.Dates.Shortest(ready);
    }

    /// <summary>The dates of a batch that is mixed now; null where the catalog does not know its flakes.</summary>
    internal KeepingDates? OfFresh(ResinPart flakes, string solvent, string shelf) => Of(new KeptBatch(default, bench.Now, flakes, null, [new Stay(bench.Now, shelf)]), solvent);

    private KeepingDates? Of(KeptBatch batch, string solvent)
    {
        if (bench.Catalog.Grades.Find(batch.Flakes.Grade) is not { } grade || bench.Catalog.Keeping.Find(grade.Keeping) is not { } kind)
        {
            return null;
        }

        var left = FlakeAge.LifeLeft(batch.Flakes.FlakeDate, DateOnly.FromDateTime(batch.Since), kind, batch.Flakes.Cloudy || Doubts.IsFoundBad(batch));
        var life = new LifeSpent(
            batch.Since,
            batch.Warmth(shelf => ShelfMoves.HistoryOf(bench, shelf)),
            warmth => lives.MonthsOn(kind, solvent, warmth) ?? KeepingEstimate.OfClaims(kind, warmth, bench.Keeping),
            left);
        return new KeepingDates(batch.Since, life.TestFrom, life.UseBy) { Basis = lives.Basis(new(kind.Id, solvent)) };
    }

    private static KeepingDates? All(IEnumerable<KeepingDates?> dates)
    {
        var all = dates.ToArray();
        return all.Length == 0 || all.Contains(null) ? null : all.Select(d => d!).Aggregate((one, other) => one.Shortest(other));
    }

    private bool IsKnown(Stay stay) => ShelfMoves.IsKnown(bench, stay.Shelf);

    private static IEnumerable<KeptBatch> AsOldAsTheOldest(JarLife life)
    {
        var begun = (IBeginning)life.Standing[^1];
        var moves = life.Standing.Reverse().OfType<Moved>().ToArray();
        return life.Jar.Held.Resins.Select(flakes => moves.Aggregate(
            new KeptBatch(life.Jar.Number, begun.MixedAt, flakes, null, [new Stay(begun.MixedAt, begun.Shelf)]), (batch, move) => batch.Then(move.At, move.Shelf)));
    }
}
