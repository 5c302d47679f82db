namespace JarLabel.Operations.Recording;

/// <summary>Adds one jar's events to the ledger in one step and keeps its history up to date with them.</summary>
internal sealed class Recorder(LedgerStep step, JarNumber jar)
{
    private readonly List<EventRow> rows = [.. step.EventsOf(Subject.Jar(jar.Value))];

    /// <summary>Takes the next jar number.</summary>
    internal static Recorder ForNewJar(LedgerStep step) => new(step, JarNumber.From(step.NextNumber(SubjectKind.Jar)));

    /// <summary>The jar's number.</summary>
    internal JarNumber Jar => jar;

    /// <summary>The ledger as this step sees it.</summary>
    internal LedgerStep Step => step;

    /// <summary>True when the jar got other dates in this step.</summary>
    internal bool Redated { get; private set; }

    /// <summary>The jar as it is so far.</summary>
    internal Result<JarHistory> History => JarHistory.Of(jar, rows);

    /// <summary>The jar, unless somebody has worked on it since a form was opened that is of no jar until it is filled in.</summary>
    internal Result<JarHistory> Unchanged(Workbench bench) => History.Then<JarHistory>(history =>
        bench.EventsSeen is { } seen && rows.Any(row => row.Sequence > seen && row.Kind != nameof(Labelled)) ? OperationProblems.ChangedSince(history) : history);

    /// <summary>The jar with what the shop's tests and its bags say of it now.</summary>
    internal Result<JarHistory> Marked(Workbench bench) => History.Then(history => LearnedDates.Mark(bench, step, history));

    /// <summary>Gives the jar the dates that the shop's tests say now, where they are clearly others.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="later">False to take only sooner ones: what is done to a jar must not make it younger.</param>
    internal Result<JarHistory> Redate(Workbench bench, bool later)
    {
        if (!Marked(bench).TryGet(out var history, out var faults))
        {
            return faults;
        }

        return history.Jar.Learned is { } now && (later || now.UseBy < history.Jar.Dates.UseBy)
            ? Redate(Core.Jars.Redated.Known(bench.Now, history.Jar, now)).Then<JarHistory>(dated => dated.Knowing(history.Jar.Doubts))
            : history;
    }

    /// <summary>After a step was taken back: the dates that the jar had got since go on for all that happened before it.</summary>
    internal Result<JarHistory> DatedAgain(Workbench bench) => History.Then(history => history.Events.Select(e => e.Event).OfType<Redated>().LastOrDefault() is not { } last || !history.Jar.OnShelf
        ? history
        : ShopLives.Of(bench, step, jar).Then(lives => new JarDating(bench, step, lives).Of(history.Life) is { } dates && ShelfMoves.Changed(history.Jar.Dates, dates) is { } now
            ? Redate(last with { At = bench.Now, Dates = now })
            : history));

    /// <summary>Gives the jar other dates.</summary>
    internal Result<JarHistory> Redate(Redated happened)
    {
        Redated = true;
        return Append(happened);
    }

    /// <summary>The jar, when the moment is not before its last step that still stands.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="undoing">True to take that step back: where it lies ahead of the clock, only what stands before it can be wrong after that.</param>
    internal Result<JarHistory> InTime(Workbench bench, bool undoing = false) => History.Then(history =>
        history.Life.Standing is [var last, ..] standing
            ? bench.NotBefore(last.At, () => OperationProblems.OutOfOrder(jar, last, bench.Now), () => Behind(bench.Now, undoing && Workbench.IsAhead(last.At, bench.Now) ? standing.ElementAtOrDefault(1) : last)).Then<JarHistory>(_ => history)
            : history);

    private Problem? Behind(DateTime clock, JarEvent? last) => last is not null && last.At > clock ? OperationProblems.ClockBehind(jar, last, clock) : null;

    /// <summary>Adds an event and gives the jar as it is then.</summary>
    internal Result<JarHistory> Append(JarEvent happened)
    {
        var revision = (rows.Count == 0 ? 0 : rows[^1].Revision) + (happened.ChangesContents ? 1 : 0);
        var at = happened.At.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);
        rows.Add(step.Append(Subject.Jar(jar.Value), at, happened.GetType().Name, revision, JarEventJson.Write(happened)));
        return History;
    }
}
