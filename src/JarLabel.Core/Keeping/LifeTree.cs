namespace JarLabel.Core.Keeping;

/// <summary>What all tests say of every class, for one shape of the lives' scatter and one pace of ageing: up from the classes to their flakes and to the
/// shop, and down again. What went up is kept, as every class that is asked for needs it.</summary>
internal sealed class LifeTree
{
    private const double OfShop = 0.25, OfFlakes = 0.35, OfClass = 1 - OfShop - OfFlakes;
    private const double MostHazard = 1e300, Tiny = 1e-5, LeastProduct = 1e-200, LeastFactor = 1e-100;

    private readonly OffsetGrid grid;
    private readonly double deviation;
    private readonly Dictionary<LifeClass, Belief> found;
    private readonly Dictionary<LifeClass, Belief> upward;
    private readonly Dictionary<string, Belief> ofFlakes;

    /// <param name="grid">Where the beliefs lie.</param>
    /// <param name="deviation">That of a class's keeping time before any test.</param>
    /// <param name="shape">The shape of the Weibull distribution.</param>
    /// <param name="tests">The lives by class, at the pace.</param>
    /// <param name="kinds">The base months.</param>
    internal LifeTree(OffsetGrid grid, double deviation, double shape, IEnumerable<(LifeClass Class, IReadOnlyList<LifeObservation> Lives)> tests, CatalogTable<KeepingClass> kinds)
    {
        this.grid = grid;
        this.deviation = deviation;
        found = tests.ToDictionary(t => t.Class, t => OffsetGrid.Likely(Logs(grid.Offsets, shape, (double)kinds.Require(t.Class.Keeping).MonthsAt20C * Months.AverageDays, t.Lives)));
        upward = found.ToDictionary(f => f.Key, f => grid.Across(f.Value, Deviation(OfClass)));
        ofFlakes = found.Keys.Select(c => c.Keeping).Distinct(StringComparer.Ordinal).ToDictionary(k => k, k => grid.Across(Flakes(k, except: null), Deviation(OfFlakes)), StringComparer.Ordinal);
    }

    /// <summary>What all tests together say of one class.</summary>
    internal Belief Said(LifeClass wanted)
    {
        var shop = ofFlakes.Where(k => k.Key != wanted.Keeping).Select(k => k.Value).Aggregate(grid.Normal(Deviation(OfShop)), Belief.Both);
        var flakes = Belief.Both(grid.Across(shop, Deviation(OfFlakes)), Flakes(wanted.Keeping, except: wanted));
        var own = grid.Across(flakes, Deviation(OfClass));
        return found.TryGetValue(wanted, out var seen) ? Belief.Both(own, seen) : own;
    }

    /// <summary>What the classes of some flakes say of these flakes.</summary>
    private Belief Flakes(string keeping, LifeClass? except) =>
        upward.Where(u => u.Key.Keeping == keeping && u.Key != except).Select(u => u.Value).Aggregate(OffsetGrid.Flat, Belief.Both);

    private double Deviation(double part) => deviation * Math.Sqrt(part);

    /// <summary>The logarithm of how likely the lives are at every place of the grid. The hazard gathered up to an age is a number of that age times one of the
    /// place, so that no power is taken for a life at a place.</summary>
    private static double[] Logs(double[] offsets, double shape, double days, IReadOnlyList<LifeObservation> lives)
    {
        LifeObservation[] seen = [.. lives.Where(l => l.Until <= l.After)];
        LifeObservation[] rest = [.. lives.Where(l => !(l.Until <= l.After))];
        var outlived = rest.Sum(l => Hazard(l.After));
        double[] ends = [.. rest.Where(l => l.Until is not null).Select(l => Hazard(l.Until!.Value) - Hazard(l.After))];
        return [.. offsets.Select(At)];

        double Hazard(double age) => -Math.Log(LearningSettings.BaseStillGood) * Math.Pow(age / days, shape);

        double At(double offset)
        {
            var pace = Math.Exp(-shape * offset);
            var exact = seen.Length == 0 ? 0 : seen.Sum(Weibull.Through(shape, days * Math.Exp(offset), LearningSettings.BaseStillGood).LogLikelihood);
            return exact - Math.Min(MostHazard, outlived * pace) + LogOfEnds(ends, pace);
        }
    }

    /// <summary>The sum of ln(1 - e^-x) over all ends: the factors are multiplied, and a logarithm is taken only now and then.</summary>
    private static double LogOfEnds(double[] ends, double pace)
    {
        var (log, product) = (0.0, 1.0);
        foreach (var end in ends)
        {
            var x = end * pace;
            var factor = x < Tiny ? x : 1 - Math.Exp(-x);
            if (factor < LeastFactor)
            {
                log += Math.Log(Math.Max(double.Epsilon, factor));
                continue;
            }

            product *= factor;
            if (product < LeastProduct)
            {
                log += Math.Log(product);
                product = 1;
            }
        }

        return log + Math.Log(product);
    }
}

/// <summary>What something says, as weights on the places of an <see cref="OffsetGrid"/>.</summary>
/// <param name="Weights">The weights; the largest is 1.</param>
/// <param name="Log">The logarithm of what they were divided by for that, so that one belief can be held against another.</param>
internal readonly record struct Belief(double[] Weights, double Log)
{
    /// <summary>The logarithm of all of it together.</summary>
    internal double LogSum => Log + Math.Log(Weights.Sum());

    /// <summary>Both together.</summary>
    internal static Belief Both(Belief one, Belief other)
    {
        var product = Scaled([.. one.Weights.Zip(other.Weights, (a, b) => a * b)]);
        return product with { Log = product.Log + one.Log + other.Log };
    }

    /// <summary>Weights as they come.</summary>
    internal static Belief Scaled(double[] weights)
    {
        var most = weights.Max();
        return most > 0 ? new([.. weights.Select(w => w / most)], Math.Log(most)) : new(weights, 0);
    }
}
