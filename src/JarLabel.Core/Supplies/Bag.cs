namespace JarLabel.Core.Supplies;

/// <summary>What a bag of flakes is now.</summary>
public sealed class Bag : Supply
{
    private Bag(SupplyNumber number, BagAdded added)
        : base(SupplyKind.Bag, number, added.Weight.Grams, added.Made, added.Note) => Grade = added.Grade;

    /// <summary>The grade's id.</summary>
    public override string Holds => Grade;

    /// <summary>The grade's id.</summary>
    public string Grade { get; }

    /// <summary>What it held at first.</summary>
    public Mass Bought => Mass.FromGrams(Full);

    /// <summary>What it holds.</summary>
    public Mass Left => Mass.FromGrams(Rest);

    /// <summary>When the flakes were made or bought.</summary>
    public DateOnly Made => Since;

    /// <summary>How a pinch of it last dissolved; null when none was tried.</summary>
    public PinchTest? Test { get; private set; }

    /// <summary>The worst that a pinch of it ever did; null when none was tried.</summary>
    public Pinch? Worst { get; private set; }

    /// <summary>The newest pinch that did not dissolve whole; null when all did. A better one later takes nothing back of it: flakes do not get better.</summary>
    public PinchTest? Bad { get; private set; }

    /// <summary>True when a pinch of it swelled to a gel: nothing is to be mixed from it.</summary>
    public bool Unfit => Test is { Pinch: Pinch.Gel };

    /// <summary>True when a pinch of it dissolved cloudy: what is mixed from it keeps less long.</summary>
    public bool Cloudy => Test is { Pinch: Pinch.Cloudy };

    /// <summary>The bag after all its events, in order; a problem where they cannot be one bag's life.</summary>
    public static Result<Bag> Fold(SupplyNumber number, IReadOnlyList<SupplyEvent> events) =>
        Fold<Bag, BagAdded>(SupplyKind.Bag, number, events, added => new Bag(number, added));

    /// <inheritdoc/>
    public override string Shown(double amount, bool metric = false) => BenchAmount.Both(Mass.FromGrams(amount), metric);

    private protected override bool Knows(SupplyEvent happened) => happened is FlakesTaken or FlakesLeft or FlakesTested or SupplyDiscarded;

    private protected override void Forget() => (Test, Worst, Bad) = (null, null, null);

    private protected override void NoteOwn(SupplyEvent happened)
    {
        if (happened is FlakesTested tested)
        {
            Test = new(tested.At, tested.Pinch);
            Worst = Worst > tested.Pinch ? Worst : tested.Pinch;
            Bad = tested.Pinch == Pinch.All ? Bad : Test;
        }
    }

    private protected override SupplyEvent Taking(DateTime at, double amount, JarNumber jar) => new FlakesTaken(at, Mass.FromGrams(amount), jar);

    private protected override bool IsNothing(double amount) => BenchAmount.IsNothing(Mass.FromGrams(amount));
}

/// <summary>How a pinch of a bag last dissolved.</summary>
/// <param name="At">When.</param>
/// <param name="Pinch">What became of it.</param>
public sealed record PinchTest(DateTime At, Pinch Pinch)
{
    /// <summary>The day.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At);
}
