namespace JarLabel.Core.Supplies;

/// <summary>What a bottle of alcohol is now: the fold of its events.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Solvent">The solvent's id.</param>
/// <param name="Bought">What it held at first.</param>
/// <param name="Left">What it holds.</param>
/// <param name="Since">When it was bought or opened.</param>
/// <param name="Shelf">Where it stands.</param>
/// <param name="Material">What it is made of; null when nobody said.</param>
/// <param name="Note">What was noted when it came.</param>
public sealed record Bottle(
    SupplyNumber Number, string Solvent, Volume Bought, Volume Left, DateOnly Since, string Shelf, ContainerMaterial? Material, string? Note)
{
    /// <summary>False once it left the shop or is empty.</summary>
    public bool OnHand => !Discarded && Left > Volume.Zero;

    /// <summary>True once it left the shop.</summary>
    public bool Discarded { get; private init; }

    /// <summary>What was taken and not put back, in order.</summary>
    public IReadOnlyList<SolventTaken> Taken { get; private init; } = [];

    /// <summary>The bottle after all its events, in order; a problem where they cannot be one bottle's life.</summary>
    public static Result<Bottle> Fold(SupplyNumber number, IReadOnlyList<SupplyEvent> events)
    {
        return events.Count == 0 ? SupplyProblems.NoSuch(SupplyKind.Bottle, number)
            : events[0] is not BottleAdded added ? SupplyProblems.CannotFollow(SupplyKind.Bottle, number, events[0])
            : events.Skip(1).Aggregate((Result<Bottle>)Begin(number, added), (bottle, e) => bottle.Then(b => b.After(e)));
    }

    /// <summary>The bottle when it is still in the shop; else a problem.</summary>
    /// <param name="where">Where it was typed.</param>
    public Result<Bottle> DemandOnHand(string where) => OnHand ? this : SupplyProblems.Gone(SupplyKind.Bottle, Number, where);

    /// <summary>The event that takes alcohol out for a jar. What is within half a percent of all, as a bench reads it, is all.</summary>
    /// <returns>Null when there is not so much in it.</returns>
    public SolventTaken? Take(DateTime at, Volume volume, JarNumber jar) =>
        volume > Left * SupplyReading.Most ? null : new SolventTaken(at, volume >= Left * SupplyReading.Least || BenchAmount.IsNothing(Left - volume) ? Left : volume, jar);

    private static Bottle Begin(SupplyNumber number, BottleAdded added) =>
        new(number, added.Solvent, added.Volume, added.Volume, added.Bought, added.Shelf, added.Material, added.Note);

    private Result<Bottle> After(SupplyEvent happened) => happened switch
    {
        SupplyLabelled => this,
        PutBack back => PutBackFrom(back),
        SolventLeft left => this with { Left = left.Volume, Discarded = false },
        _ when Discarded => SupplyProblems.CannotFollow(SupplyKind.Bottle, Number, happened),
        SolventTaken taken when taken.Volume <= Left => this with { Left = Left - taken.Volume, Taken = [.. Taken, taken] },
        BottleMoved moved => this with { Shelf = moved.Shelf },
        SupplyDiscarded => this with { Discarded = true },
        _ => SupplyProblems.CannotFollow(SupplyKind.Bottle, Number, happened),
    };

    private Result<Bottle> PutBackFrom(PutBack back) => Taken.LastOrDefault(t => t.For == back.From) is { } taken
        ? this with { Left = Left + taken.Volume, Taken = [.. Taken.Where(t => !ReferenceEquals(t, taken))] }
        : SupplyProblems.CannotFollow(SupplyKind.Bottle, Number, back);
}
