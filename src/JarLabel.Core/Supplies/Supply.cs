namespace JarLabel.Core.Supplies;

/// <summary>What batches are mixed from, as it is now: the fold of the events of a bag or a bottle. Amounts are grams in a bag and millilitres in a
/// bottle.</summary>
public abstract class Supply
{
    private readonly List<SupplyEvent> standing = [];
    private bool givenBack;

    private protected Supply(SupplyKind kind, SupplyNumber number, double full, DateOnly since, string? note) =>
        (Kind, Number, Full, Since, Note) = (kind, number, full, since, note);

    /// <summary>A bag or a bottle.</summary>
    public SupplyKind Kind { get; }

    /// <summary>Its number.</summary>
    public SupplyNumber Number { get; }

    /// <summary>When it was made, bought or opened: its age counts from it.</summary>
    public DateOnly Since { get; }

    /// <summary>What was noted when it came.</summary>
    public string? Note { get; }

    /// <summary>The id of what is in it: a grade or a solvent.</summary>
    public abstract string Holds { get; }

    /// <summary>What it held at first.</summary>
    public double Full { get; }

    /// <summary>What it holds.</summary>
    public double Rest { get; private set; }

    /// <summary>True once it left the shop.</summary>
    public bool Discarded { get; private set; }

    /// <summary>True once it was taken back that it ever came.</summary>
    public bool TakenBack => standing.Count == 0;

    /// <summary>False once it left the shop or is empty.</summary>
    public bool OnHand => !TakenBack && !Discarded && Rest > 0;

    /// <summary>What was taken and not put back, in order.</summary>
    public IReadOnlyList<ITaking> Taken => [.. standing.OfType<ITaking>()];

    /// <summary>When it was last measured; null when it never was. From then on it holds what was measured.</summary>
    public DateTime? Measured => standing.LastOrDefault(e => e is IReading)?.At;

    /// <summary>True when it was measured on a later day: what is entered now of a day before that was in the measuring already.</summary>
    public bool IsMeasuredSince(DateTime at) => Measured?.Date > at.Date;

    /// <summary>The last thing that was said of it and still stands; null when nothing does. Labels are not among them: they are paper.</summary>
    public SupplyEvent? Last => standing.Count == 0 ? null : standing[^1];

    /// <summary>What was said of it before that and still stands; null when nothing was.</summary>
    public SupplyEvent? Latest => standing.MaxBy(happened => happened.At);

    /// <summary>What was said before the last, and still stands; null for nothing.</summary>
    public SupplyEvent? BeforeLast => standing.Count < 2 ? null : standing[^2];

    /// <summary>An amount of what is in it, as it is shown.</summary>
    public abstract string Shown(double amount, bool metric = false);

    /// <summary>What is left of what came, as it is shown; or why there is nothing to use.</summary>
    public string Standing(bool metric) => this switch
    {
        { OnHand: true } => $"{Shown(Rest, metric)} of {Shown(Full, metric)}",
        { TakenBack: true } => "its entry was taken back",
        { Discarded: true } => "discarded",
        _ => "nothing more",
    };

    /// <summary>The event that takes some out for a jar. What is within half a percent of all, as a bench measures, is all; so is what leaves less
    /// than a bench can measure.</summary>
    /// <returns>Null when there was not so much in it at that moment.</returns>
    public SupplyEvent? Take(DateTime at, double amount, JarNumber jar) => RestAt(at) is var rest && amount > rest * SupplyReading.Most
        ? null
        : Taking(at, amount >= rest * SupplyReading.Least || IsNothing(rest - amount) ? rest : amount, jar);

    /// <summary>Looks at it as it was at a moment, where it was measured after that: so much of it can still be entered as taken then.</summary>
    internal void LookAt(DateTime at) => Rest = RestAt(at);

    /// <summary>The event that takes the last step at it back. What a jar took is taken back at the jar.</summary>
    public Result<SupplyUndone> Undo(DateTime at) => Last switch
    {
        null => SupplyProblems.NothingToUndo(this),
        ITaking taking => SupplyProblems.TakenByJar(this, taking.Jar),
        var last => new SupplyUndone(at, last.Name),
    };

    /// <summary>Folds the events, in order; a problem where they cannot be the life of one.</summary>
    private protected static Result<T> Fold<T, TAdded>(SupplyKind kind, SupplyNumber number, IReadOnlyList<SupplyEvent> events, Func<TAdded, T> begin)
        where T : Supply
        where TAdded : SupplyEvent
    {
        if (events.Count == 0 || events[0] is not TAdded added)
        {
            return events.Count == 0 ? SupplyProblems.NoSuch(kind, number) : SupplyProblems.CannotFollow(kind, number, events[0]);
        }

        var supply = begin(added);
        supply.Stand(added);
        return events.Skip(1).FirstOrDefault(happened => !supply.Takes(happened)) is { } amiss ? SupplyProblems.CannotFollow(kind, number, amiss) : supply;
    }

    /// <summary>True where this kind can be told of it: flakes are not poured, and no bottle is tested.</summary>
    private protected abstract bool Knows(SupplyEvent happened);

    /// <summary>Forgets what was said beside how much there is.</summary>
    private protected abstract void Forget();

    /// <summary>What the event says beside how much there is.</summary>
    private protected abstract void NoteOwn(SupplyEvent happened);

    private protected abstract SupplyEvent Taking(DateTime at, double amount, JarNumber jar);

    private protected abstract bool IsNothing(double amount);

    /// <summary>Takes one more event; false where it cannot follow what was before.</summary>
    private bool Takes(SupplyEvent happened)
    {
        switch (happened)
        {
            case SupplyLabelled:
                return true;
            case PutBack back:
                givenBack = true;
                return PutsBack(standing.FindLastIndex(e => e is ITaking taking && taking.Jar == back.From));
            case SupplyUndone undone:
                return Undoes(undone);
            default:
                var fits = !TakenBack && Knows(happened) && (happened is IReading || !Discarded) && !(happened is ITaking taken && taken.Size > Rest && !IsMeasuredSince(happened.At) && !givenBack);
                if (fits)
                {
                    Stand(happened);
                }

                return fits;
        }
    }

    private bool Undoes(SupplyUndone undone)
    {
        if (Last is not { } last || last is ITaking || last.Name != undone.What)
        {
            return false;
        }

        standing.RemoveAt(standing.Count - 1);
        Replay();
        return true;
    }

    /// <summary>What a step took that never happened is here again, unless it was measured since: what a scale said is not changed by what was entered wrongly.
    /// (Ledgers were written while more was put back; what was taken of that then empties it.)</summary>
    private bool PutsBack(int at)
    {
        if (at < 0)
        {
            return false;
        }

        standing.RemoveAt(at);
        Replay();
        return true;
    }

    private void Replay()
    {
        SupplyEvent[] events = [.. standing];
        standing.Clear();
        (Rest, Discarded) = (0, false);
        Forget();
        foreach (var happened in events)
        {
            Stand(happened);
        }
    }

    /// <summary>What it held at a moment: now, or where it was measured after that, just before it was.</summary>
    private double RestAt(DateTime at)
    {
        if (standing.Find(e => e is IReading && e.At.Date > at.Date) is not { } measured)
        {
            return Rest;
        }

        return standing.Where(e => e.At.Date < measured.At.Date).Aggregate(Full, (rest, e) => e is ITaking taking ? rest - taking.Size : e is IReading read ? read.Size : rest);
    }

    private void Stand(SupplyEvent happened)
    {
        Rest = happened switch
        {
            ITaking when IsMeasuredSince(happened.At) => Rest,
            ITaking taking => Math.Max(0, Rest - taking.Size),
            IReading read => read.Size,
            _ when standing.Count == 0 => Full,
            _ => Rest,
        };
        Discarded = happened is SupplyDiscarded || (Discarded && happened is not IReading { Size: > 0 });
        NoteOwn(happened);
        standing.Add(happened);
    }
}

/// <summary>Some of it went into a jar.</summary>
public interface ITaking
{
    /// <summary>How much, in grams or millilitres.</summary>
    double Size { get; }

    /// <summary>The jar.</summary>
    JarNumber Jar { get; }
}

/// <summary>Somebody measured what is left; that holds from then on.</summary>
internal interface IReading
{
    /// <summary>How much, in grams or millilitres.</summary>
    double Size { get; }
}
