namespace JarLabel.Core.Jars;

/// <summary>A jar's events folded one by one, with what still stands of them, so that the last can be taken back.</summary>
public sealed class JarLife
{
    private readonly Stack<(JarEvent Event, Jar After)> standing = new();

    private JarLife(JarEvent beginning, Jar jar)
    {
        standing.Push((beginning, jar));
        Jar = jar;
    }

    /// <summary>The jar as it is now.</summary>
    public Jar Jar { get; private set; }

    /// <summary>The events that were not taken back, the last first. Labels and other dates are not among them: nobody did them, they follow.</summary>
    public IReadOnlyList<JarEvent> Standing => [.. standing.Select(s => s.Event).Where(e => e is not Redated)];

    /// <summary>True where its dates are those it got when its flakes were found to be going off.</summary>
    public bool IsDatedForFlakes => standing.Select(s => s.Event).OfType<Redated>().FirstOrDefault() is { Setting: Redated.OfFlakes };

    /// <summary>Folds the events, in order; a problem where they cannot be one jar's life.</summary>
    public static Result<JarLife> Of(JarNumber number, IEnumerable<JarEvent> events)
    {
        Result<JarLife>? life = null;
        foreach (var happened in events)
        {
            life = life is { } before
                ? before.Then(l => l.Take(happened))
                : Jar.Begin(number, happened).Then<JarLife>(jar => new JarLife(happened, jar));
        }

        return life ?? JarProblems.NoSuchJar(number);
    }

    /// <summary>The event that takes the last standing one back.</summary>
    public Result<Undone> Undo(DateTime at) => Standing is [var last, ..]
        ? new Undone(at, last.Name, last.ChangesContents)
        : JarProblems.NothingToUndo(Jar.Number);

    /// <summary>By place, whether what happened was taken back by a later step: in the same order as the fold.</summary>
    public static IReadOnlyList<bool> TakenBack(IReadOnlyList<JarEvent> events)
    {
        var (taken, standing) = (new bool[events.Count], new Stack<int>());
        for (var place = 0; place < events.Count; place++)
        {
            if (events[place] is Undone undone)
            {
                while (undone.What != nameof(Redated) && standing.TryPeek(out var dates) && events[dates] is Redated)
                {
                    taken[standing.Pop()] = true;
                }

                if (standing.TryPop(out var last))
                {
                    taken[last] = true;
                }
            }
            else if (events[place] is not Labelled)
            {
                standing.Push(place);
            }
        }

        return taken;
    }

    private static string Began(JarEvent beginning) => beginning switch
    {
        Blended => "blending",
        Decanted => "decanting",
        _ => "mixing",
    };

    private Result<JarLife> Take(JarEvent happened) => happened is Undone undone
        ? TakeBack(undone)
        : Jar.After(happened).Then(after => Stand(happened, after));

    private Result<JarLife> Stand(JarEvent happened, Jar after)
    {
        if (happened is not Labelled)
        {
            standing.Push((happened, after));
        }

        Jar = after;
        return this;
    }

    /// <summary>A jar whose beginning is taken back keeps its number, which may be on glass, holds nothing and stands on no shelf. Other dates that it got
    /// since the step go with it; a ledger of before may have taken them back alone.</summary>
    private Result<JarLife> TakeBack(Undone undone)
    {
        while (undone.What != nameof(Redated) && standing.TryPeek(out var top) && top.Event is Redated)
        {
            standing.Pop();
        }

        if (!standing.TryPop(out var last) || last.Event.Name != undone.What)
        {
            return JarProblems.OtherUndone(Jar.Number, undone, last.Event?.Name);
        }

        var before = standing.TryPeek(out var still) ? still.After : last.After with { Contents = new([], []), OnShelf = false, TakenBack = Began(last.Event) };
        Jar = before with { Revision = Jar.Revision + (undone.Changes ? 1 : 0) };
        return this;
    }
}
