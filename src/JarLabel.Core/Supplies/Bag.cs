namespace JarLabel.Core.Supplies;

/// <summary>What a bag of flakes is now: the fold of its events.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Grade">The grade's id.</param>
/// <param name="Bought">What it held at first.</param>
/// <param name="Left">What it holds.</param>
/// <param name="Made">When the flakes were made or bought.</param>
/// <param name="Note">What was noted when it came.</param>
public sealed record Bag(SupplyNumber Number, string Grade, Mass Bought, Mass Left, DateOnly Made, string? Note)
{
    /// <summary>False once it left the shop or is empty.</summary>
    public bool OnHand => !Discarded && Left > Mass.Zero;

    /// <summary>True once it left the shop.</summary>
    public bool Discarded { get; private init; }

    /// <summary>How a pinch of it last dissolved; null when none was tried.</summary>
    public PinchTest? Test { get; private init; }

    /// <summary>The worst that a pinch of it ever did; null when none was tried.</summary>
    public Pinch? Worst { get; private init; }

    /// <summary>True when a pinch of it swelled to a gel: nothing is to be mixed from it.</summary>
    public bool Unfit => Test is { Pinch: Pinch.Gel };

    /// <summary>True when a pinch of it dissolved cloudy: what is mixed from it keeps less long.</summary>
    public bool Cloudy => Test is { Pinch: Pinch.Cloudy };

    /// <summary>What was taken and not put back, in order.</summary>
    public IReadOnlyList<FlakesTaken> Taken { get; private init; } = [];

    /// <summary>The bag after all its events, in order; a problem where they cannot be one bag's life.</summary>
    public static Result<Bag> Fold(SupplyNumber number, IReadOnlyList<SupplyEvent> events)
    {
        return events.Count == 0 ? SupplyProblems.NoSuch(SupplyKind.Bag, number)
            : events[0] is not BagAdded added ? SupplyProblems.CannotFollow(SupplyKind.Bag, number, events[0])
            : events.Skip(1).Aggregate((Result<Bag>)new Bag(number, added.Grade, added.Weight, added.Weight, added.Made, added.Note), (bag, e) => bag.Then(b => b.After(e)));
    }

    /// <summary>The bag when it is still in the shop; else a problem.</summary>
    /// <param name="where">Where it was typed.</param>
    public Result<Bag> DemandOnHand(string where) => OnHand ? this : SupplyProblems.Gone(SupplyKind.Bag, Number, where);

    /// <summary>The event that takes flakes out for a jar. What is within half a percent of all, as a bench weighs, is all.</summary>
    /// <returns>Null when there is not so much in it.</returns>
    public FlakesTaken? Take(DateTime at, Mass weight, JarNumber jar) =>
        weight > Left * SupplyReading.Most ? null : new FlakesTaken(at, weight >= Left * SupplyReading.Least || BenchAmount.IsNothing(Left - weight) ? Left : weight, jar);

    /// <summary>The bag when its flakes still dissolve; else a problem.</summary>
    public Result<Bag> DemandFit() => Unfit ? SupplyProblems.Unfit(this) : this;

    private Result<Bag> After(SupplyEvent happened) => happened switch
    {
        SupplyLabelled => this,
        PutBack back => PutBackFrom(back),
        FlakesLeft left => this with { Left = left.Weight, Discarded = false },
        _ when Discarded => SupplyProblems.CannotFollow(SupplyKind.Bag, Number, happened),
        FlakesTested tested => this with
        {
            Test = new(DateOnly.FromDateTime(tested.At), tested.Pinch),
            Worst = Worst > tested.Pinch ? Worst : tested.Pinch,
        },
        FlakesTaken taken when taken.Weight <= Left => this with { Left = Left - taken.Weight, Taken = [.. Taken, taken] },
        SupplyDiscarded => this with { Discarded = true },
        _ => SupplyProblems.CannotFollow(SupplyKind.Bag, Number, happened),
    };

    private Result<Bag> PutBackFrom(PutBack back) => Taken.LastOrDefault(t => t.For == back.From) is { } taken
        ? this with { Left = Left + taken.Weight, Taken = [.. Taken.Where(t => !ReferenceEquals(t, taken))] }
        : SupplyProblems.CannotFollow(SupplyKind.Bag, Number, back);
}

/// <summary>How a pinch of a bag last dissolved.</summary>
/// <param name="Day">The day.</param>
/// <param name="Pinch">What became of it.</param>
public sealed record PinchTest(DateOnly Day, Pinch Pinch);
