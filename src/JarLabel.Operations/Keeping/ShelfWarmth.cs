namespace JarLabel.Operations.Keeping;

/// <summary>Dates the jars anew when a shelf becomes warmer or cooler.</summary>
internal static class ShelfWarmth
{
    /// <summary>Records the new dates and settles the new warmth: both or neither. What was left between the two by a program that was killed is caught up with when the
    /// same is said again.</summary>
    /// <param name="before">The shop as it is.</param>
    /// <param name="settings">What is to be settled.</param>
    /// <param name="settle">Settles it; nothing on a dry run.</param>
    internal static Result<SettledShop> Redate(Workbench before, ShopSettings settings, Func<Result<ShopSettings>> settle)
    {
        Shelf[] changed = [.. settings.Shelves.Where(shelf => before.Settings.Shelves.Any(s => s.Name == shelf.Name && !IsAsWarm(s, shelf)))];
        return changed.Length == 0 || !File.Exists(before.Folder.Ledger)
            ? settle().Then<SettledShop>(settled => new SettledShop(settled, []))
            : LedgerAccess.Record(before, step => Jars(before, before.With(settings), step, changed[0].Name).Then(jars => settle().Then<SettledShop>(settled => new SettledShop(settled, jars)
            {
                Cautions = jars.Count == 0 ? [] : [KeepingProblems.Redated(changed[0].Name, jars)],
            })));
    }

    private static bool IsAsWarm(Shelf one, Shelf other) => one.Temperature.DegreesCelsius.Equals(other.Temperature.DegreesCelsius) && one.Earlier.SequenceEqual(other.Earlier);

    private static Result<IReadOnlyList<RedatedJar>> Jars(Workbench before, Workbench after, LedgerStep step, string shelf) =>
        ShopLives.Of(before, step).Then(was => ShopLives.Of(after, step).Then(now =>
        {
            var (old, anew) = (new JarDating(before, step, was), new JarDating(after, step, now));
            return Results.All(Standing(step, before.Dated ? null : shelf).Select(jar => Redate(after, new Recorder(step, jar), shelf, old, anew)))
                .Then(jars => Result<IReadOnlyList<RedatedJar>>.Of([.. jars.SelectMany(jar => jar).OrderBy(jar => jar.UseBy)]));
        }));

    /// <summary>The jar with its new dates; none where they stay.</summary>
    private static Result<IReadOnlyList<RedatedJar>> Redate(Workbench bench, Recorder recorder, string shelf, JarDating old, JarDating anew) => recorder.History.Then(history =>
        ShelfMoves.Changed(old.Of(history.Life), anew.Of(history.Life)) is { } dates && ShelfMoves.Changed(history.Jar.Dates, dates) is not null
        && (dates.UseBy < history.Jar.Dates.UseBy || anew.Doubts.Of(history).Count == 0)
            ? recorder.Redate(new Redated(Later(bench.Now, history.Events[^1].Event.At), dates) { Shelf = shelf }).Then(_ => Result<IReadOnlyList<RedatedJar>>.Of([new RedatedJar(recorder.Jar, dates.UseBy, history.IsLabelled)]))
            : Result<IReadOnlyList<RedatedJar>>.Of([]));

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;

    /// <summary>The jars that stand on a shelf; where a day was said, all jars, because some may have stood there then.</summary>
    private static List<JarNumber> Standing(LedgerView view, string? shelf) => [.. view.Standing(shelf).Select(entry => JarNumber.From(entry.Number))];
}

/// <summary>What a shop has settled, and the jars that got other dates by it.</summary>
/// <param name="Settings">The settings in force.</param>
/// <param name="Redated">The jars, soonest use-by first.</param>
internal sealed record SettledShop(ShopSettings Settings, IReadOnlyList<RedatedJar> Redated)
{
    /// <summary>What to say of them.</summary>
    internal IReadOnlyList<Problem> Cautions { get; init; } = [];
}
