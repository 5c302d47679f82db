namespace JarLabel.Operations.Keeping;

/// <summary>The dates of a jar as the shop's drying tests say now.</summary>
internal static class LearnedDates
{
    /// <summary>What moves a use-by by less is no reason to print a label again: all of it is an estimate.</summary>
    internal const int ToldDays = 7;

    /// <summary>The jar, with the dates that the tests say now where they are clearly others than those on record.</summary>
    internal static Result<JarHistory> Mark(Workbench bench, LedgerView view, JarHistory history) =>
        ShopLives.Of(bench, view, history.Jar.Number).Then<JarHistory>(lives => history with { Jar = Mark(bench, lives, history) });

    /// <summary>The jar alone. Where its own test failed no other date is told: it has none to promise.</summary>
    internal static Jar Mark(Workbench bench, LearnedLives lives, JarHistory history)
    {
        var jar = history.Jar with { Learned = null };
        return jar is { OnShelf: true, FailedOn: null } && lives.SaysMore && Now(bench, lives, history.Life) is { } now && Math.Abs(now.UseBy.DayNumber - jar.Dates.UseBy.DayNumber) >= ToldDays
            ? jar with { Learned = now }
            : jar;
    }

    /// <summary>What to say of a jar whose dates have moved; nothing where they have not.</summary>
    internal static IReadOnlyList<Problem> Cautions(Jar jar, bool labelled) =>
        jar.Learned is { } now ? [OperationProblems.UseByMoved(jar.Number, jar.Dates.UseBy, now.UseBy, labelled)] : [];

    /// <summary>The dates of a fresh batch in this shop.</summary>
    /// <param name="lives">What the tests say.</param>
    /// <param name="kind">The flakes' keeping class.</param>
    /// <param name="solvent">The solvent's id.</param>
    /// <param name="shelf">How warm its shelf is.</param>
    /// <param name="estimate">Makes dates of the months on that shelf that the tests say, or of nothing where they say nothing.</param>
    internal static KeepingDates Fresh(LearnedLives lives, KeepingClass kind, string solvent, Temperature shelf, Func<double?, KeepingDates> estimate) =>
        estimate(lives.MonthsOn(kind, solvent, shelf)) with { Basis = lives.Basis(new(kind.Id, solvent)) };

    /// <summary>A jar that was mixed and only moved since is dated again from the beginning. Of any other the new dates may only be sooner.</summary>
    private static KeepingDates? Now(Workbench bench, LearnedLives lives, JarLife life)
    {
        var plain = life.Standing[^1] is Mixed && !life.Standing.OfType<Thickened>().Any();
        var replayed = Replay(bench, lives, life);
        var dates = plain || replayed is null ? replayed : life.Jar.Dates.Shortest(replayed);
        return dates is null ? null : dates with { Ready = life.Jar.Dates.Ready };
    }

    /// <summary>The dates of all that is in it now, as if mixed when the oldest of it was, and kept on each shelf as long as the jar stood there.</summary>
    private static KeepingDates? Replay(Workbench bench, LearnedLives lives, JarLife life)
    {
        var begun = (IBeginning)life.Standing[^1];
        var mixed = DateOnly.FromDateTime(begun.MixedAt);
        var dates = Anew(bench, lives, life.Jar.Held, begun.MixedAt, begun.Shelf);
        var warmth = ShelfMoves.HistoryOf(bench, begun.Shelf).On(mixed);
        foreach (var (day, next) in ChangesOfWarmth(bench, life, begun, mixed))
        {
            dates = dates?.AfterMove(day, warmth, next, bench.Keeping) ?? dates;
            warmth = next;
        }

        return dates;
    }

    /// <summary>When it became warmer or cooler about the jar: its shelf did, or it went to another.</summary>
    private static IEnumerable<(DateOnly Day, Temperature Warmth)> ChangesOfWarmth(Workbench bench, JarLife life, IBeginning begun, DateOnly mixed)
    {
        var (since, shelf) = (mixed, ShelfMoves.HistoryOf(bench, begun.Shelf));
        foreach (var move in life.Standing.Reverse().OfType<Moved>())
        {
            var day = DateOnly.FromDateTime(move.At);
            foreach (var change in shelf.Changes(since, day))
            {
                yield return change;
            }

            (since, shelf) = (day, ShelfMoves.HistoryOf(bench, move.Shelf));
            yield return (day, shelf.On(day));
        }

        foreach (var change in shelf.Changes(since, DateOnly.FromDateTime(bench.Now)))
        {
            yield return change;
        }
    }

    /// <summary>The most careful dates of all that is in it, as if mixed at that moment; null where the catalog no longer knows its grades.</summary>
    private static KeepingDates? Anew(Workbench bench, LearnedLives lives, Contents contents, DateTime mixed, string shelf)
    {
        var warmth = ShelfMoves.HistoryOf(bench, shelf).On(DateOnly.FromDateTime(mixed));
        var all = contents.Resins.SelectMany(r => contents.Solvents.Select(s => Part(r, s.Solvent))).ToArray();
        return all.Length == 0 || all.Contains(null) ? null : all.Select(d => d!).Aggregate((one, other) => one.Shortest(other));

        KeepingDates? Part(ResinPart resin, string solvent) =>
            bench.Catalog.Grades.Find(resin.Grade) is { } grade && bench.Catalog.Keeping.Find(grade.Keeping) is { } kind && bench.Catalog.Forms.Find(grade.Form) is { } form
                ? Fresh(lives, kind, solvent, warmth, months => KeepingEstimate.Of(mixed, kind, form, Warmth.Reference, warmth, resin.FlakeDate, bench.Keeping, months, resin.Cloudy))
                : null;
    }
}
