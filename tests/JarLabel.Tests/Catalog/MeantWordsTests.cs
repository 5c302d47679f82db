namespace JarLabel.Tests.Catalog;

/// <summary>What people call flakes and alcohols, and what they are led to.</summary>
public class MeantWordsTests
{
    private static readonly ShopCatalog Ours = ShopCatalog.Ours;

    [Theory]
    [InlineData("garnet dewaxed", "garnet-dewaxed")]
    [InlineData("Dewaxed garnet", "garnet-dewaxed")]
    [InlineData("garnet, dewaxed", "garnet-dewaxed")]
    [InlineData("dewaxed blonde", "blonde")]
    [InlineData("blond", "blonde")]
    public void A_grade_is_known_by_its_words_in_any_order(string typed, string id) => Assert.Equal(id, Ours.Grades.Named(typed, "grade").Require().Id);

    [Theory]
    [InlineData("denatured alcohol", "denatured-unknown")]
    [InlineData("meths", "denatured-unknown")]
    [InlineData("methylated spirits", "denatured-unknown")]
    [InlineData("methylated", "denatured-unknown")]
    [InlineData("ethanol 95 %", "ethanol-95")]
    [InlineData("190 proof ethanol", "ethanol-95")]
    [InlineData("rubbing alcohol", "isopropanol-70")]
    public void An_alcohol_is_known_by_its_words_and_a_doubtful_one_is_the_worst_it_can_be(string typed, string id) => Assert.Equal(id, Ours.Solvents.Named(typed, "solvent").Require().Id);

    [Theory]
    [InlineData("ethanol", "ethanol-95, ethanol-96, ethanol-99, ethanol-absolute:")]
    [InlineData("ethnol", "ethanol-95, ethanol-96, ethanol-99, ethanol-absolute:")]
    [InlineData("isopropyl", "isopropanol-99, isopropanol-91, isopropanol-70:")]
    [InlineData("isopropanol", "isopropanol-99, isopropanol-91, isopropanol-70:")]
    [InlineData("denatured-us", "denatured-sda1, denatured-sda3a, denatured-eu, denatured-methanol-50, denatured-unknown:")]
    [InlineData("alcohol", "ethanol-95, denatured-unknown, isopropanol-70:")]
    public void A_word_that_could_be_several_is_answered_with_all_of_them(string typed, string candidates)
    {
        var problem = Assert.Single(Ours.Solvents.Named(typed, "solvent").Problems);
        Assert.Equal("JL201", problem.Code);
        Assert.Contains($"which could be {candidates}", problem.Message, StringComparison.Ordinal);
    }

    /// <summary>Methanol blinds: whatever letters are alike, nobody who did not name it is led to it.</summary>
    [Theory]
    [InlineData("ethanol")]
    [InlineData("ethnol")]
    [InlineData("ehtanol")]
    [InlineData("mthanol")]
    [InlineData("metanol")]
    [InlineData("methonol")]
    [InlineData("ethyl")]
    [InlineData("methyl")]
    [InlineData("spirit")]
    [InlineData("methanol95")]
    [InlineData("etanol-95")]
    public void Nothing_with_methanol_is_proposed_for_a_slip(string typed)
    {
        var said = Assert.Single(Ours.Solvents.Named(typed, "solvent").Problems).Message;
        var proposed = said[..said.IndexOf("Known are", StringComparison.Ordinal)].Replace($"\"{typed}\"", "", StringComparison.Ordinal);
        Assert.DoesNotContain("methanol", proposed, StringComparison.Ordinal);
        Assert.DoesNotContain("denatured", proposed, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_alcohol_that_may_hold_methanol_is_named_only() => Assert.Equal(
        ["denatured-sda1", "denatured-sda3a", "denatured-methanol-50", "denatured-unknown", "methanol"],
        Ours.Solvents.Rows.Where(solvent => solvent.IsNamedOnly).Select(solvent => solvent.Id));
}
