namespace JarLabel.Operations.Keeping;

/// <summary>The dates of a jar as the shop's drying tests say now.</summary>
internal static class LearnedDates
{
    /// <summary>What moves a use-by by less is no reason to print a label again: all of it is an estimate.</summary>
    internal const int ToldDays = 7;

    /// <summary>The jar, with the dates that the tests say now where they are clearly others than those on record, and with what is known of its flakes.</summary>
    internal static Result<JarHistory> Mark(Workbench bench, LedgerView view, JarHistory history) =>
        ShopLives.Of(bench, view, history.Jar.Number).Then<JarHistory>(lives => history with { Jar = Mark(new JarDating(bench, view, lives), history) });

    /// <summary>The jar alone. Where its own test failed no other date is told: it has none to promise. Where its flakes were found bad, no later one is.</summary>
    internal static Jar Mark(JarDating dating, JarHistory history)
    {
        var jar = history.Jar with { Learned = null, Doubts = dating.Doubts.Of(history) };
        jar = jar with { FlakesCleared = !jar.Doubts.Shortened && history.Life.IsDatedForFlakes };
        return jar is { OnShelf: true, FailedOn: null } && (dating.Lives.SaysMore || jar.Doubts.Shortened || jar.FlakesCleared) && dating.Of(history.Life) is { } now && IsTold(jar, now.UseBy.DayNumber - jar.Dates.UseBy.DayNumber)
            ? jar with { Learned = now }
            : jar;
    }

    private static bool IsTold(Jar jar, int daysLater) => Math.Abs(daysLater) >= ToldDays && (daysLater < 0 || !jar.Doubts.Any);

    /// <summary>What to say of a jar whose dates have moved; nothing where they have not.</summary>
    internal static IReadOnlyList<Problem> Cautions(Jar jar, bool labelled) =>
        jar.Learned is { } now ? [OperationProblems.UseByMoved(jar, now.UseBy, labelled)] : [];

    /// <summary>The dates of a fresh batch in this shop.</summary>
    /// <param name="lives">What the tests say.</param>
    /// <param name="kind">The flakes' keeping class.</param>
    /// <param name="solvent">The solvent's id.</param>
    /// <param name="shelf">How warm its shelf is.</param>
    /// <param name="estimate">Makes dates of the months on that shelf that the tests say, or of nothing where they say nothing.</param>
    internal static KeepingDates Fresh(LearnedLives lives, KeepingClass kind, string solvent, Temperature shelf, Func<double?, KeepingDates> estimate) =>
        estimate(lives.MonthsOn(kind, solvent, shelf)) with { Basis = lives.Basis(new(kind.Id, solvent)) };
}
