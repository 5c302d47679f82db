namespace JarLabel.Tests.House;

/// <summary>What nobody has looked up is told: to whoever reads the list, and by every answer that stands on it.</summary>
public class UnverifiedFiguresTests
{
    [Fact]
    public void The_map_lists_every_figure_from_memory_and_no_other()
    {
        var map = File.ReadAllText(Path.Combine(Checkout.Root, "src", "JarLabel.Core", "Catalog", "UNVERIFIED.md"));
        Assert.Equal(
            string.Join('\n', UnverifiedFigures.All(ShopCatalog.Ours).Select(f => "- " + f)),
            string.Join('\n', map.Split('\n').Where(line => line.StartsWith("- ", StringComparison.Ordinal))));
    }

    // Counted in the data files by their own words, not by the code that lists them.
    [Fact]
    public void No_row_from_memory_is_missing_in_the_list()
    {
        var folder = Path.Combine(Checkout.Root, "src", "JarLabel.Core", "Catalog", "data");
        var marks = Directory.EnumerateFiles(folder, "*.json").Sum(f => File.ReadAllLines(f).Count(line => line.Contains("\"source\": \"memory", StringComparison.Ordinal)));
        Assert.InRange(marks, 1, 200);
        Assert.Equal(marks + UnverifiedFigures.Of(RuleSet.Osha).Count(), UnverifiedFigures.All(ShopCatalog.Ours).Count);
    }

    [Fact]
    public void An_answer_names_the_figures_it_stands_on_and_no_others()
    {
        var sda = ShopCatalog.Ours.Solvents.Find("denatured-methanol-50")!;
        var jar = MixtureClassifier.Classify(sda.Composition, RuleSet.Osha, ShopCatalog.Ours).PouredFrom([sda, sda]);
        Assert.Single(jar.Unverified, line => line.StartsWith("what is in denatured-methanol-50", StringComparison.Ordinal));
        Assert.DoesNotContain(jar.Unverified, line => line.Contains("butan", StringComparison.Ordinal) || line.Contains("ppm", StringComparison.Ordinal));
        var methanol = ShopCatalog.Ours.Solvents.Find("methanol")!.Composition;
        Assert.Empty(MixtureClassifier.Classify(methanol, RuleSet.Clp, ShopCatalog.Ours).Unverified);
        Assert.Contains("2012", Assert.Single(MixtureClassifier.Classify(methanol, RuleSet.Osha, ShopCatalog.Ours).Unverified), StringComparison.Ordinal);
        Assert.Contains(Air("denatured-methanol-50", RuleSet.Clp).Unverified, line => line.StartsWith("what is in denatured-methanol-50", StringComparison.Ordinal));
        Assert.DoesNotContain(Air("ethanol-95", RuleSet.Osha).Unverified, line => line.Contains("ppm", StringComparison.Ordinal));
    }

    private static AirAssessment Air(string solvent, RuleSet rules) => RoomAirAssessor.Assess(
        ShopCatalog.Ours.Solvents.Find(solvent)!,
        AirQuestion.Of(Volume.FromMilliliters(250), Volume.FromCubicMeters(50)).Require(),
        rules).Require();
}
