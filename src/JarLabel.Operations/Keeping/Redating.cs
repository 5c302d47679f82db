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
                Cautions = jars.Count == 0 ? [] : [KeepingProblems.Redated(cause.Words, jars)],
            })));
    }

    /// <summary>Why jars may get other dates: shelves, a setting, or several of them at once; null where nothing is settled that dates hang on.</summary>
    private static RedatingCause? Cause(ShopSettings was, ShopSettings now)
    {
        string[] shelves = [.. now.Shelves.Where(shelf => was.Shelves.Any(s => s.Name == shelf.Name && !IsAsWarm(s, shelf))).Select(shelf => shelf.Name)];
        string[] settings =
        [
            .. now.AgingPerTenKelvin != was.AgingPerTenKelvin ? (string[])["aging"] : [],
            .. now.Learning.StillGood != was.Learning.StillGood ? (string[])["still-good"] : [],
            .. now.Learning.Spread != was.Learning.Spread ? (string[])["keeping-spread"] : [],
        ];
        return shelves.Length + settings.Length == 0 ? null : new(shelves, settings);
    }

    private static bool IsAsWarm(Shelf one, Shelf other) => one.Temperature.DegreesCelsius.Equals(other.Temperature.DegreesCelsius) && one.Earlier.SequenceEqual(other.Earlier);

    private static Result<IReadOnlyList<RedatedJar>> Jars(Workbench before, Workbench after, LedgerStep step, RedatingCause cause) =>
        ShopLives.Of(before, step).Then(was => ShopLives.Of(after, step).Then(now =>
        {
            var (old, anew) = (new JarDating(before, step, was), new JarDating(after, step, now));
            return Results.All(Standing(step, before.Dated ? null : cause).Select(jar => Redate(after, new Recorder(step, jar), cause, old, anew)))
                .Then(jars => Result<IReadOnlyList<RedatedJar>>.Of([.. jars.SelectMany(jar => jar).OrderBy(jar => jar.UseBy)]));
        }));

    /// <summary>The jar with its new dates; none where they stay.</summary>
    private static Result<IReadOnlyList<RedatedJar>> Redate(Workbench bench, Recorder recorder, RedatingCause cause, JarDating old, JarDating anew) => recorder.History.Then(history =>
        history.Jar.FailedOn is null && ShelfMoves.Changed(old.Of(history.Life), anew.Of(history.Life)) is { } dates && ShelfMoves.Changed(history.Jar.Dates, dates) is not null
        && (dates.UseBy < history.Jar.Dates.UseBy || !anew.Doubts.Of(history).Any)
            ? recorder.Redate(cause.Of(history, Later(bench.Now, history.Events[^1].Event.At), dates)).Then(_ => Result<IReadOnlyList<RedatedJar>>.Of([new RedatedJar(recorder.Jar, dates.UseBy, history.IsLabelled)]))
            : Result<IReadOnlyList<RedatedJar>>.Of([]));

    private static DateTime Later(DateTime one, DateTime other) => one > other ? one : other;

    /// <summary>The jars that stand on the shelves that are why; where a day was said, or a setting is why, all jars, because some may have stood there then.</summary>
    private static List<JarNumber> Standing(LedgerView view, RedatingCause? cause) => cause is { Settings.Count: 0 }
        ? [.. cause.Shelves.SelectMany(shelf => view.Standing(shelf)).Select(entry => JarNumber.From(entry.Number))]
        : [.. view.Standing(null).Select(entry => JarNumber.From(entry.Number))];
}

/// <summary>Why jars got other dates.</summary>
/// <param name="Shelves">The shelves that became warmer or cooler.</param>
/// <param name="Settings">The settings that were changed.</param>
internal sealed record RedatingCause(IReadOnlyList<string> Shelves, IReadOnlyList<string> Settings)
{
    /// <summary>With what dates moved.</summary>
    internal string Words => (Shelves, Settings) switch
    {
        ([var shelf], []) => $"the warmth of shelf {Quoted.Of(shelf)}",
        ([], [_]) => "this setting",
        _ => "these settings",
    };

    /// <summary>What is recorded of a jar: the shelf where it stands or stood there, else the setting; where it is neither, tests that are read anew.</summary>
    internal Redated Of(JarHistory history, DateTime at, KeepingDates dates)
    {
        var events = history.Events.Select(one => one.Event).ToArray();
        string[] stood = [.. events.Select(one => one switch { IBeginning begun => begun.Shelf, Moved moved => moved.Shelf, _ => null }).OfType<string>().Reverse()];
        return stood.FirstOrDefault(Shelves.Contains) is { } shelf ? new Redated(at, dates) { Shelf = shelf }
            : Settings is [var setting, ..] ? new Redated(at, dates) { Setting = setting }
            : new Redated(at, dates) { Shelf = events[0] is Mixed ? null : Shelves[0] };
    }
}

/// <summary>What a shop has settled, and the jars that got other dates by it.</summary>
/// <param name="Settings">The settings in force.</param>
/// <param name="Redated">The jars, soonest use-by first.</param>
internal sealed record SettledShop(ShopSettings Settings, IReadOnlyList<RedatedJar> Redated)
{
    /// <summary>What to say of them.</summary>
    internal IReadOnlyList<Problem> Cautions { get; init; } = [];
}
