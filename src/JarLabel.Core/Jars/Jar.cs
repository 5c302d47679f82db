using JarLabel.Core.Keeping;

namespace JarLabel.Core.Jars;

/// <summary>What a jar is now: the fold of its events.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Revision">How many events changed its contents.</param>
/// <param name="Contents">What is in it.</param>
/// <param name="Container">What it stands in.</param>
/// <param name="MixedAt">When it was mixed.</param>
/// <param name="Dates">Ready, test-from, use-by.</param>
/// <param name="Shelf">Where it stands.</param>
/// <param name="By">Who mixed it.</param>
/// <param name="Job">What it is for.</param>
/// <param name="Note">The newest note.</param>
public sealed record Jar(
    JarNumber Number,
    int Revision,
    Contents Contents,
    Container Container,
    DateTime MixedAt,
    KeepingDates Dates,
    string Shelf,
    string? By,
    string? Job,
    string? Note)
{
    /// <summary>The jar after all its events, in order; a problem where they cannot be one jar's life.</summary>
    public static Result<Jar> Fold(JarNumber number, IEnumerable<JarEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        Result<Jar>? jar = null;
        foreach (var happened in events)
        {
            jar = jar is { } before ? before.Then(j => j.After(happened)) : Begin(number, happened);
        }

        return jar ?? JarProblems.NoSuchJar(number);
    }

    /// <summary>How the jar stands at a moment.</summary>
    public JarState StateAt(DateTime moment) => Dates.StateAt(moment);

    private static Result<Jar> Begin(JarNumber number, JarEvent happened) => happened switch
    {
        Mixed m => new Jar(number, 1, m.Contents, m.Container, m.At, m.Dates, m.Shelf, m.By, m.Job, m.Note),
        _ => JarProblems.NoBeginning(number, happened),
    };

    private Result<Jar> After(JarEvent happened) => happened switch
    {
        Labelled => this,
        _ => JarProblems.CannotFollow(Number, happened),
    };
}
