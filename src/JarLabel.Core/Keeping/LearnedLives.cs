namespace JarLabel.Core.Keeping;

/// <summary>What a shop's drying tests say of how long each class of jars keeps.</summary>
/// <remarks>Lifetimes of a class are Weibull. How far its keeping time is off the base months is a factor whose logarithm is normal before
/// any test, in three layers: what is so in the whole shop, with these flakes in any solvent, and of this class alone. So a class with few
/// tests leans on its relatives, the nearest most, and one with many stands on its own. The layers form a tree, which is worked out exactly
/// on a grid, once for each shape and each pace of ageing that is thought possible: another pace makes other ages of the tests at 20 °C.
/// <para>The band comes from all of it: shape, pace and keeping time are learned together. The estimate itself leaves every shape and pace the weight it
/// had before any test; where tests contradict all that was thought possible it may come to lie outside the band, which is then made wide enough to hold it. Under one of each, as all ties are positive, a pass anywhere moves the keeping time up and a failure moves it down; with weights
/// that stay, so does the whole. If they were weighed anew, a late pass could make wide scatter likelier and so shorten the use-by, and a pass
/// on a warm shelf could make ageing less a matter of warmth and so shorten the use-by on a cool one. And it is never later than the convention for warmth
/// alone would give.</para></remarks>
public sealed class LearnedLives
{
    private const double BandLow = 0.05, Middle = 0.5, BandHigh = 0.95;

    private readonly IReadOnlyDictionary<LifeClass, ClassTests> tests;
    private readonly CatalogTable<KeepingClass> kinds;
    private readonly LearningSettings settings;
    private readonly KeepingSettings warmth;
    private readonly OffsetGrid grid;
    private readonly Dictionary<(LifeClass Class, double Tens), LifeEstimate> known = [];
    private readonly Lazy<LifeTree[][]> trees;

    /// <param name="tests">The tested jars by class.</param>
    /// <param name="kinds">The base months.</param>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="warmth">How warmth acts; the usual where nothing is said.</param>
    public LearnedLives(IReadOnlyDictionary<LifeClass, ClassTests> tests, CatalogTable<KeepingClass> kinds, LearningSettings settings, KeepingSettings? warmth = null)
    {
        this.tests = tests;
        this.kinds = kinds;
        this.settings = settings;
        this.warmth = warmth ?? KeepingSettings.Usual;
        grid = new OffsetGrid(settings.Deviation);
        trees = new(() => [.. Enumerable.Range(0, PaceMatters ? this.warmth.Paces.Count : 1).Select(TreesAt)]);
    }

    /// <summary>The classes that have tests, by name.</summary>
    public IReadOnlyList<LifeClass> Tested => [.. tests.Keys.OrderBy(c => c.ToString(), StringComparer.Ordinal)];

    /// <summary>True when tests, or the share wanted, may say something else than the base months.</summary>
    public bool SaysMore => tests.Count > 0 || !settings.AsBase;

    /// <summary>How much faster jars here age when it is 10 °C warmer.</summary>
    public AgingEstimate Pace => warmth.FixedQ10 is { } one ? new(one, one, one, Set: true)
        : !PaceMatters ? new(Aging.Middle, Aging.Low, Aging.High, Set: false)
        : AgingBelief.Of(warmth.Paces, [.. Learned(Said(Tested[0])).GroupBy(p => p.Pace).OrderBy(g => g.Key).Select(g => g.Sum(p => p.Weight))]);

    /// <summary>How long jars of a class keep at 20 °C.</summary>
    public LifeEstimate Of(LifeClass wanted) => Of(wanted, Warmth.Reference);

    /// <summary>How long jars of a class keep on a shelf.</summary>
    public LifeEstimate Of(LifeClass wanted, Temperature shelf)
    {
        var place = (wanted, Warmth.TensAbove(shelf));
        if (!known.TryGetValue(place, out var estimate))
        {
            known[place] = estimate = Estimate(wanted, shelf);
        }

        return estimate;
    }

    /// <summary>The months on a shelf that the shop's tests say, rounded down to a hundredth; null where they say nothing.</summary>
    public double? MonthsOn(KeepingClass kind, string solvent, Temperature shelf) =>
        SaysMore ? Math.Floor(100 * Of(new(kind.Id, solvent), shelf).Months) / 100 : null;

    /// <summary>On what an estimate for a class stands; null where no jar was ever tested.</summary>
    public KeepingBasis? Basis(LifeClass wanted) => tests.Count == 0 ? null : new(tests.GetValueOrDefault(wanted)?.Tests ?? 0, Related(wanted));

    /// <summary>When a share of a class's jars will still be good at 20 °C: nine times of ten the true age lies in this.</summary>
    /// <param name="wanted">The class.</param>
    /// <param name="stillGood">Shares between 0 and 1.</param>
    public IReadOnlyList<LifeBandPoint> Band(LifeClass wanted, IEnumerable<double> stillGood)
    {
        var (months, learned) = (Base(wanted), Learned(On(Said(wanted), 0)));
        return [.. stillGood.Select(share =>
        {
            var mixture = new OffsetMixture(grid, learned.Select(p => (p.Weight, LearningSettings.ShiftTo(p.Shape, share), p.Belief)));
            return new LifeBandPoint(share, months * Math.Exp(mixture.Quantile(BandLow)), months * Math.Exp(mixture.Quantile(BandHigh)));
        })];
    }

    private LifeEstimate Estimate(LifeClass wanted, Temperature shelf)
    {
        var (months, tens) = (Base(wanted), Warmth.TensAbove(shelf));
        var (own, said) = (tests.GetValueOrDefault(wanted), On(Said(wanted), tens));
        var learned = Learned(said);
        var band = Mixture(learned, tens);
        var expected = tests.Count == 0 && settings.AsBase ? months * Warmth.Keeping(shelf, warmth) : months * Math.Exp(Careful(said, tens));
        return new LifeEstimate(
            wanted,
            months * Warmth.Keeping(shelf, warmth),
            expected,
            Math.Min(expected, months * Math.Exp(band.Quantile(BandLow))),
            Math.Max(expected, months * Math.Exp(band.Quantile(BandHigh))),
            own?.Lives ?? [],
            Related(wanted))
        {
            Tests = own?.Tests ?? 0,
            Shape = learned.Sum(p => p.Weight * p.Shape) / learned.Sum(p => p.Weight),
        };
    }

    /// <summary>The middle of what is said, but no later than the convention for warmth alone gives. Both only rise with a pass and only fall with a failure, so
    /// the lower does too.</summary>
    private double Careful(Part[] said, double tens)
    {
        var middle = Mixture(said, tens).Quantile(Middle);
        Part[] latest = [.. said.Where(p => p.Pace == warmth.LatestPace)];
        return latest.Length == 0 || latest.Length == said.Length ? middle : Math.Min(middle, Mixture(latest, tens).Quantile(Middle));
    }

    private OffsetMixture Mixture(IEnumerable<Part> parts, double tens) =>
        new(grid, parts.Select(p => (p.Weight, settings.Shift(p.Shape) - (tens * Math.Log(warmth.Paces[p.Pace].Q10)), p.Belief)));

    /// <summary>What all tests say of one class under each shape and pace, weighed as before any test.</summary>
    private Part[] Said(LifeClass wanted)
    {
        var shapes = LearningSettings.Shapes;
        Belief[][] beliefs = tests.Count == 0
            ? [[.. shapes.Select(_ => grid.Normal(settings.Deviation))]]
            : [.. trees.Value.Select(pace => (Belief[])[.. pace.Select(tree => tree.Said(wanted))])];
        return [.. warmth.Paces.SelectMany((pace, p) => shapes.Select((s, i) => new Part(s.Shape, p, s.Weight * pace.Weight, beliefs[Math.Min(p, beliefs.Length - 1)][i])))];
    }

    /// <summary>Where neither the tests nor the shelf make a difference between paces, one of them says it all.</summary>
    private Part[] On(Part[] said, double tens) => PaceMatters || tens != 0 ? said : [.. said.Where(p => p.Pace == 0)];

    /// <summary>The same, each shape and pace weighed anew by how well it foretold the tests.</summary>
    private static Part[] Learned(Part[] said)
    {
        var most = said.Max(p => p.Belief.LogSum);
        return [.. said.Select(p => p with { Weight = p.Weight * Math.Exp(p.Belief.LogSum - most) })];
    }

    private LifeTree[] TreesAt(int pace) =>
        [.. LearningSettings.Shapes.Select(s => new LifeTree(grid, settings.Deviation, s.Shape, tests.Select(t => (t.Key, t.Value.At(pace))), kinds))];

    /// <summary>True when some tested jar stood warmer or cooler than 20 °C.</summary>
    private bool PaceMatters => warmth.FixedQ10 is null && tests.Values.Any(t => t.AtPaces is not null);

    private int Related(LifeClass wanted) => tests.Where(t => t.Key != wanted).Sum(t => t.Value.Lives.Count);

    private double Base(LifeClass of) => (double)kinds.Require(of.Keeping).MonthsAt20C;

    /// <summary>What is said of a class under one shape and one pace.</summary>
    /// <param name="Shape">The shape.</param>
    /// <param name="Pace">Which pace.</param>
    /// <param name="Weight">What it counts.</param>
    /// <param name="Belief">What is said.</param>
    private readonly record struct Part(double Shape, int Pace, double Weight, Belief Belief);
}

/// <summary>What the tested jars of one class showed.</summary>
/// <param name="Lives">One for each jar, ages brought to 20 °C by the middle pace of ageing.</param>
/// <param name="Tests">How many tests that were.</param>
public sealed record ClassTests(IReadOnlyList<LifeObservation> Lives, int Tests)
{
    /// <summary>The same lives with their ages brought to 20 °C by each of the paces that are thought possible; null where all stood at 20 °C.</summary>
    public IReadOnlyList<IReadOnlyList<LifeObservation>>? AtPaces { get; init; }

    /// <summary>The lives at one of the paces.</summary>
    internal IReadOnlyList<LifeObservation> At(int pace) => AtPaces?[pace] ?? Lives;

    /// <summary>What tested jars of one class showed.</summary>
    /// <param name="jars">The jars, each with at least one test that says something.</param>
    /// <param name="settings">The paces.</param>
    public static ClassTests Of(IReadOnlyCollection<TestedJar> jars, KeepingSettings settings)
    {
        IReadOnlyList<LifeObservation>[] paces = [.. settings.Paces.Select((_, pace) => (LifeObservation[])[.. jars.Select(j => DryingTests.Life(j.At(pace))!.Value)])];
        return new(paces[settings.MiddlePace], jars.Sum(j => j.Tests.Count)) { AtPaces = paces.All(p => p.SequenceEqual(paces[0])) ? null : paces };
    }
}

/// <summary>When so many jars of a class will still be good.</summary>
/// <param name="StillGood">The share, between 0 and 1.</param>
/// <param name="Low">Nine times of ten the true age is between this</param>
/// <param name="High">and this, in months as at 20 °C.</param>
public readonly record struct LifeBandPoint(double StillGood, double Low, double High);

/// <summary>How long jars of a class keep on a shelf, at 20 °C unless another was asked for, as far as is known.</summary>
/// <param name="Class">The class.</param>
/// <param name="BaseMonths">The months from published claims, brought to the shelf.</param>
/// <param name="Months">The months after the shop's tests: as many jars as wanted still dry hard then.</param>
/// <param name="Low">Nine times of ten the true figure is between this</param>
/// <param name="High">and this, in months.</param>
/// <param name="Lives">What the class's own jars showed, ages in days as at 20 °C.</param>
/// <param name="Related">How many tested jars of other classes it leans on.</param>
public sealed record LifeEstimate(
    LifeClass Class, double BaseMonths, double Months, double Low, double High, IReadOnlyList<LifeObservation> Lives, int Related)
{
    /// <summary>How many drying tests of the class's own jars it stands on.</summary>
    public int Tests { get; init; }

    /// <summary>How close together the lives end, as the shape of the Weibull distribution: the mean of what is thought possible now.</summary>
    public double Shape { get; init; } = LearningSettings.Shape;

    /// <summary>How the lifetimes scatter around the estimate, in months.</summary>
    /// <param name="stillGood">The share that <see cref="Months"/> is meant for.</param>
    public Weibull Curve(double stillGood) => Weibull.Through(Shape, Months, stillGood);
}

/// <summary>What is known of one lifetime.</summary>
/// <param name="After">It ended later than this age, 0 or more.</param>
/// <param name="Until">It ended, or is expected to end, by this age; null while nothing says so. The same as <paramref name="After"/> where the moment was seen.</param>
public readonly record struct LifeObservation(double After, double? Until)
{
    /// <summary>True when nobody saw it end: drops dried hard but slowly, so that it is expected to.</summary>
    public bool Expected { get; init; }

    /// <summary>True when it ended.</summary>
    public bool Ended => Until is not null && !Expected;
}
