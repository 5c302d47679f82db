namespace JarLabel.Operations.Recording;

/// <summary>A jar with all that happened to it.</summary>
/// <param name="Jar">What it is now.</param>
/// <param name="Events">What happened, in order, each with the revision after it.</param>
public sealed record JarHistory(Jar Jar, IReadOnlyList<(JarEvent Event, int Revision)> Events)
{
    /// <summary>How many steps there were; a label printed again is none.</summary>
    public int Steps => Events.Count(e => e.Event is not Labelled);

    /// <summary>The history, unless somebody else has done something to the jar since it was looked at.</summary>
    internal Result<JarHistory> UnchangedSince(int? seen) => seen is { } steps && steps != Steps ? OperationProblems.ChangedSince(this) : this;

    /// <summary>The jar's life, with what still stands of it.</summary>
    internal JarLife Life => JarLife.Of(Jar.Number, Events.Select(e => e.Event)).Require();

    /// <summary>The newest label on its glass; null where none was ever written.</summary>
    public Labelled? Label => Events.Select(e => e.Event).OfType<Labelled>().LastOrDefault(label => label.IsOnGlass);

    /// <summary>True when a label of it was ever written.</summary>
    public bool IsLabelled => Label is not null;

    /// <summary>The revision that the newest label speaks of; null where none was ever written.</summary>
    internal int? LabelledRevision => Label?.Revision;

    /// <summary>The same with what the jar is in doubt for, which no event of it says.</summary>
    internal JarHistory Knowing(JarDoubts doubts) => this with { Jar = Jar with { Doubts = doubts } };

    /// <summary>The history with one event more, before the ledger has it.</summary>
    internal Result<JarHistory> With(JarEvent happened) => Jar.Fold(Jar.Number, [.. Events.Select(e => e.Event), happened])
        .Then<JarHistory>(jar => new JarHistory(jar, [.. Events, (happened, jar.Revision)]));

    /// <summary>Folds the rows of one jar; a problem when there is no such jar.</summary>
    public static Result<JarHistory> Of(JarNumber number, IReadOnlyList<EventRow> rows)
    {
        var events = new List<(JarEvent, int)>(rows.Count);
        foreach (var row in rows)
        {
            if (!JarReader.Read(row).TryGet(out var happened, out var problems))
            {
                return Result<JarHistory>.Failed(problems);
            }

            events.Add((happened, row.Revision));
        }

        return Jar.Fold(number, events.Select(e => e.Item1)).Then<JarHistory>(jar => new JarHistory(jar, events));
    }
}
