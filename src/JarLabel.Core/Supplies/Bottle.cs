namespace JarLabel.Core.Supplies;

/// <summary>What a bottle of alcohol is now.</summary>
public sealed class Bottle : Supply
{
    private readonly BottleAdded added;

    private Bottle(SupplyNumber number, BottleAdded added)
        : base(SupplyKind.Bottle, number, added.Volume.Milliliters, added.Bought, added.Note) => (this.added, Shelf) = (added, added.Shelf);

    /// <summary>The solvent's id.</summary>
    public override string Holds => Solvent;

    /// <summary>The solvent's id.</summary>
    public string Solvent => added.Solvent;

    /// <summary>What it held at first.</summary>
    public Volume Bought => added.Volume;

    /// <summary>What it holds.</summary>
    public Volume Left => Volume.FromMilliliters(Rest);

    /// <summary>Where it stands.</summary>
    public string Shelf { get; private set; }

    /// <summary>What it is made of; null when nobody said.</summary>
    public ContainerMaterial? Material => added.Material;

    /// <summary>The bottle after all its events, in order; a problem where they cannot be one bottle's life.</summary>
    public static Result<Bottle> Fold(SupplyNumber number, IReadOnlyList<SupplyEvent> events) =>
        Fold<Bottle, BottleAdded>(SupplyKind.Bottle, number, events, added => new Bottle(number, added));

    /// <inheritdoc/>
    public override string Shown(double amount, bool metric = false) => BenchAmount.Both(Volume.FromMilliliters(amount), metric);

    private protected override bool Knows(SupplyEvent happened) => happened is SolventTaken or SolventLeft or BottleMoved or SupplyDiscarded;

    private protected override void Forget() => Shelf = added.Shelf;

    private protected override void NoteOwn(SupplyEvent happened) => Shelf = happened is BottleMoved moved ? moved.Shelf : Shelf;

    private protected override SupplyEvent Taking(DateTime at, double amount, JarNumber jar) => new SolventTaken(at, Volume.FromMilliliters(amount), jar);

    private protected override bool IsNothing(double amount) => BenchAmount.IsNothing(Volume.FromMilliliters(amount));
}
