using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class HazardPropertyTests
{
    private static readonly string[] Ids = ["ethanol", "propan-2-ol", "methanol", "butanone", "acetone", "1-butanol", "water"];

    private static readonly Gen<Composition> AnyMixture =
        Gen.Int[0, 1000].Array[Ids.Length]
            .Where(weights => weights.Sum() > 0)
            .Select(weights => Composition.FromWeights(weights.Zip(Ids, (w, id) => (Ours.Substances.Named(id).Require(), (decimal)w))));

    private static readonly Gen<RuleSet> AnyRules = Gen.Bool.Select(us => us ? RuleSet.Osha : RuleSet.Clp);

    [Fact]
    public void Adding_shellac_never_adds_a_class() =>
        Gen.Select(AnyMixture, AnyRules, Gen.Int[1, 900]).Sample((mixture, rules, perMille) =>
        {
            var thick = mixture.With(Ours.Substances.Named("shellac-resin").Require(), perMille / 1000m);
            var (before, after) = (Severities(mixture, rules), Severities(thick, rules));
            return after.All(rung => before.TryGetValue(rung.Key, out var plain) && plain <= rung.Value);
        });

    [Fact]
    public void Methanol_in_the_place_of_ethanol_never_makes_poisoning_or_fire_milder() =>
        Gen.Select(AnyRules, Gen.Int[0, 1000], Gen.Int[0, 1000], Gen.Int[0, 500]).Sample((rules, one, other, water) =>
        {
            var rest = 1000 - water;
            var (less, more) = (Math.Min(one, other), Math.Max(one, other));
            var (before, after) = (Severities(Blend(less * rest, water), rules), Severities(Blend(more * rest, water), rules));
            return before.Where(rung => rung.Key != "eye").All(rung => after.TryGetValue(rung.Key, out var worse) && worse <= rung.Value);

            Composition Blend(int methanolOfMillion, int waterPerMille) => Composition.FromWeights(
            [
                (Ours.Substances.Named("methanol").Require(), methanolOfMillion),
                (Ours.Substances.Named("ethanol").Require(), (1000 * (1000 - waterPerMille)) - methanolOfMillion),
                (Ours.Substances.Named("water").Require(), 1000 * waterPerMille),
            ]);
        });

    [Fact]
    public void Methanol_poured_to_a_jar_never_takes_a_poison_class_away() =>
        Gen.Select(AnyMixture, AnyRules, Gen.Int[1, 900]).Sample((mixture, rules, perMille) =>
        {
            var more = mixture.With(Ours.Substances.Named("methanol").Require(), perMille / 1000m);
            var (before, after) = (Severities(mixture, rules), Severities(more, rules));
            string[] poison = ["acute-oral", "acute-dermal", "acute-vapor", "organs"];
            return poison.Where(before.ContainsKey).All(ladder => after.TryGetValue(ladder, out var rung) && rung <= before[ladder]);
        });

    [Fact]
    public void The_order_of_the_ingredients_does_not_matter() =>
        Gen.Select(AnyMixture, AnyRules, Gen.Int[0, int.MaxValue]).Sample((mixture, rules, seed) =>
        {
            var shuffled = mixture.Ingredients.OrderBy(i => (i.Substance.Id + seed).GetHashCode(StringComparison.Ordinal)).ToArray();
            var again = Composition.FromPercentages(shuffled);
            var (one, other) = (MixtureClassifier.Classify(mixture, rules, Ours), MixtureClassifier.Classify(again, rules, Ours));
            return one.Why.SequenceEqual(other.Why) && one.OralAte == other.OralAte && one.FlashPointCelsius == other.FlashPointCelsius;
        });

    [Fact]
    public void A_jar_that_may_be_either_is_as_grave_as_the_graver() =>
        Gen.Select(AnyMixture, AnyMixture, AnyRules).Sample((one, other, rules) =>
        {
            var both = MixtureClassifier.Classify([one, other], rules, Ours);
            return both.Signal >= MixtureClassifier.Classify(one, rules, Ours).Signal
                && both.Signal >= MixtureClassifier.Classify(other, rules, Ours).Signal
                && MixtureClassifier.Classify(one, rules, Ours).Hazards.All(h => both.Hazards.Any(b => b.Class.Ladder == h.Class.Ladder));
        });

    /// <summary>Ladder to row of the class in the catalog: a smaller number is graver.</summary>
    private static Dictionary<string, int> Severities(Composition mixture, RuleSet rules)
    {
        var order = Ours.Classes.Ids.ToList();
        return MixtureClassifier.Classify(mixture, rules, Ours).Hazards.ToDictionary(h => h.Class.Ladder, h => order.IndexOf(h.Class.Id));
    }
}
