using JarLabel.Core.Catalog;

namespace JarLabel.Core.Keeping;

/// <summary>What a shop's drying tests say of how long each class of jars keeps.</summary>
/// <remarks>Lifetimes of a class are Weibull. How far its keeping time is off the base months is a factor whose logarithm is normal before
/// any test, in three layers: what is so in the whole shop, with these flakes in any solvent, and of this class alone. So a class with few
/// tests leans on its relatives, the nearest most, and one with many stands on its own. The layers form a tree, which is worked out exactly
/// on a grid, once for each shape that is thought possible.
/// <para>The band comes from all of it: shape and keeping time are learned together. The estimate itself leaves every shape the weight it had
/// before any test. Under one shape, as all ties are positive, a pass anywhere moves the keeping time up and a failure moves it down; with weights that stay,
/// so does the whole. If the shapes were weighed anew, a late pass could make wide scatter likelier and so shorten the use-by.</para></remarks>
public sealed class LearnedLives
{
    private const double OfShop = 0.25, OfFlakes = 0.35, OfClass = 1 - OfShop - OfFlakes;
    private const double BandLow = 0.05, Middle = 0.5, BandHigh = 0.95;

    private readonly IReadOnlyDictionary<LifeClass, ClassTests> tests;
    private readonly CatalogTable<KeepingClass> kinds;
    private readonly LearningSettings settings;
    private readonly OffsetGrid grid;
    private readonly Dictionary<LifeClass, LifeEstimate> known = [];
    private readonly Lazy<Dictionary<LifeClass, Belief>[]> likely;

    /// <param name="tests">The tested jars by class.</param>
    /// <param name="kinds">The base months.</param>
    /// <param name="settings">The shop's settings.</param>
    public LearnedLives(IReadOnlyDictionary<LifeClass, ClassTests> tests, CatalogTable<KeepingClass> kinds, LearningSettings settings)
    {
        ArgumentNullException.ThrowIfNull(tests);
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(settings);
        this.tests = tests;
        this.kinds = kinds;
        this.settings = settings;
        grid = new OffsetGrid(settings.Deviation);
        likely = new(() => [.. LearningSettings.Shapes.Select(s => tests.ToDictionary(t => t.Key, t => Likely(t.Key, t.Value, s.Shape)))]);
    }

    /// <summary>The classes that have tests, by name.</summary>
    public IReadOnlyList<LifeClass> Tested => [.. tests.Keys.OrderBy(c => c.ToString(), StringComparer.Ordinal)];

    /// <summary>True when tests, or the share wanted, may say something else than the base months.</summary>
    public bool SaysMore => tests.Count > 0 || !settings.AsBase;

    /// <summary>How long jars of a class keep.</summary>
    public LifeEstimate Of(LifeClass wanted)
    {
        if (!known.TryGetValue(wanted, out var estimate))
        {
            known[wanted] = estimate = Estimate(wanted);
        }

        return estimate;
    }

    /// <summary>The keeping class as this shop knows it with a solvent: its months are those learned, rounded down to a hundredth.</summary>
    public KeepingClass Kind(KeepingClass kind, string solvent)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return SaysMore ? kind with { MonthsAt20C = Math.Floor(100 * (decimal)Of(new(kind.Id, solvent)).Months) / 100 } : kind;
    }

    /// <summary>On what an estimate for a class stands; null where no jar was ever tested.</summary>
    public KeepingBasis? Basis(LifeClass wanted) => tests.Count == 0 ? null : new(Of(wanted).Tests, Of(wanted).Related);

    /// <summary>When a share of a class's jars will still be good: nine times of ten the true age lies in this.</summary>
    /// <param name="wanted">The class.</param>
    /// <param name="stillGood">Shares between 0 and 1.</param>
    public IReadOnlyList<LifeBandPoint> Band(LifeClass wanted, IEnumerable<double> stillGood)
    {
        ArgumentNullException.ThrowIfNull(stillGood);
        var (months, learned) = (Base(wanted), Learned(Said(wanted)));
        return [.. stillGood.Select(share =>
        {
            var mixture = new OffsetMixture(grid, learned.Select(s => (s.Weight, LearningSettings.ShiftTo(s.Shape, share), s.Belief)));
            return new LifeBandPoint(share, months * Math.Exp(mixture.Quantile(BandLow)), months * Math.Exp(mixture.Quantile(BandHigh)));
        })];
    }

    private LifeEstimate Estimate(LifeClass wanted)
    {
        var months = Base(wanted);
        var own = tests.GetValueOrDefault(wanted);
        var said = Said(wanted);
        var learned = Learned(said);
        var band = Mixture(learned);
        return new LifeEstimate(
            wanted, months, tests.Count == 0 && settings.AsBase ? months : At(Mixture(said).Quantile(Middle)), At(band.Quantile(BandLow)), At(band.Quantile(BandHigh)), own?.Lives ?? [], Related(wanted))
        {
            Tests = own?.Tests ?? 0,
            Shape = learned.Sum(s => s.Weight * s.Shape) / learned.Sum(s => s.Weight),
        };

        double At(double offset) => months * Math.Exp(offset);
    }

    /// <summary>What all tests say of one class under each shape, shapes weighed as before any test.</summary>
    private (double Shape, double Weight, Belief Belief)[] Said(LifeClass wanted) => [.. LearningSettings.Shapes.Select((s, i) => (s.Shape, s.Weight, Said(wanted, i)))];

    /// <summary>The same, each shape weighed anew by how well it foretold the tests.</summary>
    private static (double Shape, double Weight, Belief Belief)[] Learned((double Shape, double Weight, Belief Belief)[] said)
    {
        var most = said.Max(s => s.Belief.LogSum);
        return [.. said.Select(s => s with { Weight = s.Weight * Math.Exp(s.Belief.LogSum - most) })];
    }

    private OffsetMixture Mixture(IEnumerable<(double Shape, double Weight, Belief Belief)> said) =>
        new(grid, said.Select(s => (s.Weight, settings.Shift(s.Shape), s.Belief)));

    private int Related(LifeClass wanted) => tests.Where(t => t.Key != wanted).Sum(t => t.Value.Lives.Count);

    /// <summary>What all tests say of one class under one shape.</summary>
    private Belief Said(LifeClass wanted, int shape) => tests.Count == 0 ? grid.Normal(settings.Deviation) : Said(wanted, likely.Value[shape]);

    /// <summary>Up from every class to its flakes and to the shop, and down again to this one.</summary>
    private Belief Said(LifeClass wanted, Dictionary<LifeClass, Belief> found)
    {
        var shop = tests.Keys.Select(c => c.Keeping).Distinct(StringComparer.Ordinal).Where(k => k != wanted.Keeping)
            .Select(k => grid.Across(Flakes(found, k, except: null), Deviation(OfFlakes)))
            .Aggregate(grid.Normal(Deviation(OfShop)), Belief.Both);
        var flakes = Belief.Both(grid.Across(shop, Deviation(OfFlakes)), Flakes(found, wanted.Keeping, except: wanted));
        var own = grid.Across(flakes, Deviation(OfClass));
        return found.TryGetValue(wanted, out var seen) ? Belief.Both(own, seen) : own;
    }

    /// <summary>What the classes of some flakes say of these flakes.</summary>
    private Belief Flakes(Dictionary<LifeClass, Belief> found, string keeping, LifeClass? except) => found
        .Where(l => l.Key.Keeping == keeping && l.Key != except)
        .Select(l => grid.Across(l.Value, Deviation(OfClass)))
        .Aggregate(OffsetGrid.Flat, Belief.Both);

    private Belief Likely(LifeClass of, ClassTests found, double shape)
    {
        var days = Base(of) * Months.AverageDays;
        return grid.Likely(offset =>
        {
            var weibull = Weibull.Through(shape, days * Math.Exp(offset), LearningSettings.BaseStillGood);
            return found.Lives.Sum(weibull.LogLikelihood);
        });
    }

    private double Base(LifeClass of) => (double)kinds.Require(of.Keeping).MonthsAt20C;

    private double Deviation(double part) => settings.Deviation * Math.Sqrt(part);
}
