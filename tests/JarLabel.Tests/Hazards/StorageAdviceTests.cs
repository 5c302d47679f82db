using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class StorageAdviceTests
{
    [Theory, Cites(References.Osha106, "table H-12: glass or approved plastic 1 pt, 1 qt, 1 gal; metal 1, 5, 5 gal")]
    [InlineData(1, "glass", 473.176473, false)]
    [InlineData(1, "glass", 474, true)]
    [InlineData(2, "glass", 946.352946, false)]
    [InlineData(2, "glass", 1000, true)]
    [InlineData(2, "plastic", 1000, true)]
    [InlineData(3, "glass", 3785.411784, false)]
    [InlineData(3, "glass", 3800, true)]
    [InlineData(1, "metal", 3800, true)]
    [InlineData(2, "lined-metal", 18927, false)]
    [InlineData(2, "metal", 18930, true)]
    [InlineData(3, "metal", 18930, true)]
    public void American_container_sizes(int category, string material, double milliliters, bool passed) =>
        Assert.Equal(passed, StorageAdvice.PassedBy(Volume.FromMilliliters(milliliters), material, category, RuleSet.Osha, Ours).Count > 0);

    [Fact]
    public void What_does_not_burn_has_no_limit() =>
        Assert.Empty(StorageAdvice.PassedBy(Volume.FromLiters(100), "glass", null, RuleSet.Osha, Ours));

    [Theory, Cites(References.Trgs510, "fragile containers to 2.5 L")]
    [InlineData(2.5, false)]
    [InlineData(2.6, true)]
    public void A_german_glass_holds_at_most_two_and_a_half_litres(double liters, bool passed) =>
        Assert.Equal(passed, StorageAdvice.PassedBy(Volume.FromLiters(liters), "glass", 2, RuleSet.Clp, Ours).Count > 0);

    [Theory]
    [Cites(References.Osha106, "(d)(3) cabinet 60 gal; (e)(2)(ii)(b) 120 gal")]
    [Cites(References.Osha1926, "152(b)(1): 25 gal in a room")]
    [InlineData(StorageScope.Cabinet, 60, "")]
    [InlineData(StorageScope.Cabinet, 60.1, "us-cabinet")]
    [InlineData(StorageScope.OutsideCabinet, 25, "")]
    [InlineData(StorageScope.OutsideCabinet, 25.1, "us-construction-room")]
    [InlineData(StorageScope.OutsideCabinet, 121, "us-outside-cabinet us-construction-room")]
    public void American_shelves(StorageScope scope, double gallons, string passed)
    {
        var half = (2, Volume.FromUsGallons(gallons / 2), Mass.FromKilograms(1));
        Assert.Equal(passed, string.Join(' ', StorageAdvice.PassedBy([half, half], scope, RuleSet.Osha, Ours).Select(l => l.Id)));
    }

    [Theory, Cites(References.Osha106, "(e)(2)(ii)(b): 25 gal of category 1; 120 gal of categories 2, 3 and 4")]
    [InlineData(1, 25, "")]
    [InlineData(1, 25.1, "us-outside-cabinet-cat1")]
    [InlineData(3, 119, "")]
    [InlineData(3, 121, "us-outside-cabinet")]
    public void American_fire_areas_by_category(int category, double gallons, string passed) => Assert.Equal(
        passed,
        string.Join(' ', StorageAdvice.PassedBy([(category, Volume.FromUsGallons(gallons), Mass.FromKilograms(1))], StorageScope.OutsideCabinet, RuleSet.Osha, Ours)
            .Select(l => l.Id).Where(id => id != "us-construction-room")));

    [Theory, Cites(References.Trgs510, "of the 20 kg at most 10 kg with H224")]
    [InlineData(10, "")]
    [InlineData(10.5, "de-workroom-cat1")]
    public void German_workrooms_hold_half_as_much_of_the_most_flammable(double kilograms, string passed) => Assert.Equal(
        passed,
        string.Join(' ', StorageAdvice.PassedBy([(1, Volume.FromLiters(1), Mass.FromKilograms(kilograms))], StorageScope.OutsideCabinet, RuleSet.Clp, Ours).Select(l => l.Id)));

    [Theory]
    [Cites(References.Trgs510, "20 kg of H224 and H225 in a workroom")]
    [Cites(References.HseL138, "50 L in a workroom")]
    [InlineData(25, 20, "")]
    [InlineData(26, 20.5, "de-workroom")]
    [InlineData(51, 41, "uk-workroom de-workroom")]
    public void European_shelves(double liters, double kilograms, string passed) =>
        Assert.Equal(passed, string.Join(' ', StorageAdvice
            .PassedBy([(2, Volume.FromLiters(liters), Mass.FromKilograms(kilograms))], StorageScope.OutsideCabinet, RuleSet.Clp, Ours)
            .Select(l => l.Id)));
}
