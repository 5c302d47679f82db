namespace JarLabel.Tests.Catalog;

public class GradeTests
{
    /// <summary>Id, squares of the tone bar, waxy, months a jar keeps at 20 °C, usual form.</summary>
    public static TheoryData<string, int, bool, int, string> Grades { get; } = new()
    {
        { "bleached", 1, true, 3, "flake" },
        { "bleached-dewaxed", 1, false, 3, "flake" },
        { "blonde", 2, false, 6, "flake" },
        { "lemon", 2, true, 12, "flake" },
        { "lemon-dewaxed", 2, false, 8, "flake" },
        { "orange", 3, true, 12, "flake" },
        { "orange-dewaxed", 3, false, 8, "flake" },
        { "seedlac", 3, true, 12, "seed" },
        { "buttonlac", 4, true, 12, "button" },
        { "garnet", 4, true, 8, "flake" },
        { "garnet-dewaxed", 4, false, 8, "flake" },
        { "ruby", 5, true, 8, "flake" },
        { "ruby-dewaxed", 5, false, 8, "flake" },
    };

    [Theory, MemberData(nameof(Grades)), CommonPractice]
    public void A_grade_is_as_dark_and_waxy_and_lasting_as_the_trade_says(string id, int filled, bool waxy, int months, string form)
    {
        var grade = ShopCatalog.Ours.Grades.Named(id).Require();
        Assert.Equal(filled, grade.Tone.Filled);
        Assert.Equal(waxy, grade.Waxy);
        Assert.Equal(waxy, grade.HindersVarnishOnTop);
        Assert.Equal(months, ShopCatalog.Ours.Keeping.Named(grade.Keeping).Require().MonthsAt20C);
        Assert.Equal(form, grade.Form);
    }

    [Fact]
    public void Every_grade_has_its_check_row() => Assert.Equal(
        ShopCatalog.Ours.Grades.Ids.Order(StringComparer.Ordinal), Grades.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    [Theory, CommonPractice]
    [InlineData("white", "bleached")]
    [InlineData("refined", "bleached-dewaxed")]
    [InlineData("button", "buttonlac")]
    [InlineData("seed", "seedlac")]
    public void Shop_words_for_a_grade_are_understood(string word, string id) =>
        Assert.Equal(id, ShopCatalog.Ours.Grades.Named(word).Require().Id);

    [Fact, Cites(References.Usp, "Shellac: wax to 5.5 %, dewaxed to 0.2 %; acid values 68-76, 71-79, 73-89, 75-91; loss on drying 2 and 6 %")]
    public void Wax_acid_value_and_loss_on_drying_are_the_pharmacopeias()
    {
        Assert.All(ShopCatalog.Ours.Grades.Rows, g => Assert.Equal(g.Waxy ? 5.5m : 0.2m, g.WaxPercent!.Value));
        Assert.All(ShopCatalog.Ours.Grades.Rows, g => Assert.Equal(g.Keeping == "bleached" ? 6 : 2, g.LossOnDrying!.Value));
        Assert.Equal((75m, 91m), AcidValue("bleached-dewaxed"));
        Assert.Equal((73m, 89m), AcidValue("bleached"));
        Assert.Equal((68m, 76m), AcidValue("orange"));
        Assert.Equal((71m, 79m), AcidValue("garnet-dewaxed"));

        static (decimal Least, decimal Most) AcidValue(string id) =>
            ShopCatalog.Ours.Grades.Named(id).Require().AcidValue is { } range ? (range.Least, range.Most) : default;
    }

    [Theory, CommonPractice]
    [InlineData("ground", 1)]
    [InlineData("flake", 24)]
    [InlineData("seed", 48)]
    [InlineData("button", 72)]
    public void Coarser_forms_take_longer_to_dissolve(string form, int hours) =>
        Assert.Equal(hours, ShopCatalog.Ours.Forms.Named(form).Require().HoursAt20C);
}
