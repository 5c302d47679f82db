namespace JarLabel.Tests.Labels;

/// <summary>A jar whose drying test failed promises nothing on paper, until a later test passes.</summary>
public class FailedTestWordsTests
{
    private static readonly DateTime At = new(2026, 3, 9, 10, 0, 0);
    private static readonly Tested Failed = new(At.AddDays(60), false);
    private static readonly Tested Passed = new(At.AddDays(70), true);

    [Fact]
    public void The_failure_stands_in_the_place_of_the_use_by()
    {
        var text = Text(Failed);
        Assert.Equal(["mixed", "9 Mar 2026"], text.Tables["dates"][0]);
        Assert.Equal(["test failed", "8 May 2026"], text.Tables["dates"][1]);
        Assert.Equal(["test failed 8 May 2026", "failed 8 May 2026", "test failed"], text.Words["useByDate"]);
        Assert.DoesNotContain(text.Tables["dates"], row => row[0].StartsWith("use by", StringComparison.Ordinal) || row[0].StartsWith("test from", StringComparison.Ordinal));
        Assert.DoesNotContain("claims", text.Words["keeping"][0], StringComparison.Ordinal);
    }

    [Fact]
    public void The_code_says_so_too_is_no_longer_than_before_and_still_leads_to_its_jar()
    {
        var (before, after) = (Text().Code!, Text(Failed).Code!);
        Assert.Contains("DO NOT USE. TEST FAILED 2026-05-08.", after, StringComparison.Ordinal);
        Assert.DoesNotContain("USE BY", after, StringComparison.Ordinal);
        Assert.True(after.Length <= before.Length, after);
        Assert.Equal(142, LabelCode.Read(after)!.Jar.Value);
    }

    [Fact]
    public void A_later_pass_lifts_it()
    {
        var text = Text(Failed, Passed);
        Assert.Equal(["use by ≈", "9 Nov 2026"], text.Tables["dates"][1]);
        Assert.Equal(Text().Code, text.Code);
    }

    private static LabelText Text(params JarEvent[] tests)
    {
        var alcohol = ShopCatalog.Ours.Solvents.Find("ethanol-95")!;
        var recipe = RecipeSolver.Solve(new BatchRequest(PoundCut.FromPoundsPerUsGallon(1.5), Pour: Volume.FromMilliliters(350)), alcohol.DensityAt(Warmth.Reference)).Require();
        var dates = new KeepingDates(At.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));
        JarEvent[] events = [new Mixed(At, Contents.Of(recipe, "garnet", alcohol.Id, null), new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500)), dates, "main", Warmth.Reference), .. tests];
        var hazards = MixtureClassifier.Classify(JarComposition.Possible([(alcohol, recipe.PourWeight)], recipe.Flakes, ShopCatalog.Ours), RuleSet.Osha, ShopCatalog.Ours);
        return JarLabelText.For(new LabelFacts(Jar.Fold(JarNumber.From(142), events).Require(), events, hazards, ShopCatalog.Ours, null, null, null));
    }
}
