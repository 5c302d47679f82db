namespace JarLabel.Operations.Keeping;

/// <summary>Dates the jars anew when the shop settles something that their dates hang on: how warm a shelf is, how much faster jars age when it is warmer, how many
/// should still dry hard, how far it may be off the published claims.</summary>
internal static class Redating
{
    /// <summary>Records the new dates and settles the new setting: both or neither. What was left between the two by a program that was killed is caught up with when the
    /// same is said again.</summary>
    /// <param name="before">The shop as it is.</param>
    /// <param name="settings">What is to be settled.</param>
    /// <param name="settle">Settles it; nothing on a dry run.</param>
    internal static Result<SettledShop> Do(Workbench before, ShopSettings settings, Func<Result<ShopSettings>> settle)
    {
        return Cause(before.Settings, settings) is not { } cause || !File.Exists(before.Folder.Ledger)
            ? settle().Then<SettledShop>(settled => new SettledShop(settled, []))
            : LedgerAccess.Record(before, step => Jars(before, before.With(settings), step, cause).Then(jars => settle().Then<SettledShop>(settled => new SettledShop(settled, jars)
            {
                Cautions = jars.Count == 0 ? [] : [KeepingProblems.Redated(cause.Shelf, jars)],
            })));
    }

    /// <summary>Why jars may get other dates: a shelf, or a setting; null where nothing is settled that dates hang on.</summary>
    private static RedatingCause? Cause(ShopSettings was, ShopSettings now) =>
        now.Shelves.FirstOrDefault(shelf => was.Shelves.Any(s => s.Name == shelf.Name && !IsAsWarm(s, shelf))) is { } warmer ? new(warmer.Name, null)
        : now.AgingPerTenKelvin != was.AgingPerTenKelvin ? new(null, "aging")
        : now.Learning.StillGood != was.Learning.StillGood ? new(null, "still-good")
        : now.Learning.Spread != was.Learning.Spread ? new(null, "keeping-spread")
        : null;

    private static bool IsAsWarm(Shelf one, Shelf other) => one.Temperature.DegreesCelsius.Equals(other.Temperature.DegreesCelsius) && one.Earlier.SequenceEqual(other.Earlier);

    private static Result<IReadOnlyList<RedatedJar>> Jars(Workbench before, Workbench after, LedgerStep step, RedatingCause cause) =>
        ShopLives.Of(before, step).Then(was => ShopLives.Of(after, step).Then(now =>
        {
            var (old, anew) = (new JarDating(before, step, was), new JarDating(after, step, now));
            return Results.All(Standing(step, before.Dated ? null : cause.Shelf).Select(jar => Redate(after, new Recorder(step, jar), cause, old, anew)))
                .Then(jars => Result<IReadOnlyList<RedatedJar>>.Of([.. jars.SelectMany(jar => jar).OrderBy(jar => jar.UseBy)]));
        }));

    /// <summary>The jar with its new dates; none where they stay.</summary>
    private static Result<IReadOnlyList<RedatedJar>> Redate(Workbench bench, Recorder recorder, RedatingCause cause, JarDating old, JarDating anew) => recorder.History.Then(history =>
        history.Jar.FailedOn is null && ShelfMoves.Changed(old.Of(history.Life), anew.Of(history.Life)) is { } dates && ShelfMoves.Changed(history.Jar.Dates, dates) is not null
        && (dates.UseBy < history.Jar.Dates.UseBy || !anew.Doubts.Of(history).Any)
            ? recorder.Redate(new Redated(Later(bench.Now, history.Events[^1].Event.At), dates) { Shelf = cause.Shelf, Setting = cause.Setting }).Then(_ => Result<IReadOnlyList<RedatedJar>>.Of([new RedatedJar(recorder.Jar, dates.UseBy, history.IsLabelled)]))
            : Result<IReadOnlyList<RedatedJar>>.Of([]));

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;

    /// <summary>The jars that stand on a shelf; where a day was said, or no shelf is why, all jars, because some may have stood there then.</summary>
    private static List<JarNumber> Standing(LedgerView view, string? shelf) => [.. view.Standing(shelf).Select(entry => JarNumber.From(entry.Number))];
}

/// <summary>Why jars got other dates: the shelf that became warmer or cooler, or the setting that was changed.</summary>
internal sealed record RedatingCause(string? Shelf, string? Setting);

/// <summary>What a shop has settled, and the jars that got other dates by it.</summary>
/// <param name="Settings">The settings in force.</param>
/// <param name="Redated">The jars, soonest use-by first.</param>
internal sealed record SettledShop(ShopSettings Settings, IReadOnlyList<RedatedJar> Redated)
{
    /// <summary>What to say of them.</summary>
    internal IReadOnlyList<Problem> Cautions { get; init; } = [];
}
