namespace JarLabel.Acceptance;

/// <summary>What a bench cannot measure is no batch and no step, and no list of amounts is read in two ways.</summary>
public sealed class SmallAmountTests : IDisposable
{
    private readonly Shop shop = new();

    public SmallAmountTests() => shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("mix --grade garnet --solvent ethanol-95 --cut 2 --pour=0.2mL", "JL105", "at least 0.5 mL")]
    [InlineData("mix --grade garnet --solvent ethanol-95 --cut 2 --flakes=0.04g", "JL105", "at least 0.1 g")]
    [InlineData("mix --grade garnet --solvent ethanol-95 --cut 0.01 --pour=30mL", "JL370", "--pour \"83.5 mL\"")]
    [InlineData("calc mix --solvent ethanol-95 --cut 0.01 --pour=30mL", "JL370", "--pour \"83.5 mL\"")]
    [InlineData("thin 1 --to=1.4995", "JL371", "would add 0.1")]
    [InlineData("thicken 1 --to=1.5005", "JL371", "would add 0.0")]
    [InlineData("calc thin --from 2 --to 1.999 --of=100mL", "JL371", "0.5 mL")]
    [InlineData("calc thicken --from 2 --to 2.0001 --of=100mL", "JL371", "0.1 g")]
    [InlineData("calc blend --jar=0.2mL@2 --jar=100mL@1", "JL105", "at least 0.5 mL")]
    [InlineData("calc coverage --cut 2 --coats 1 --area=0.0001m2", "JL372", "--area \"14 sq ft\"")]
    [InlineData("use 1 0.1mL", "JL105", "at least 0.5 mL")]
    [InlineData("decant 1 --into=0.1mL", "JL105", "at least 0.5 mL")]
    [InlineData("use 1 0.3ml", "JL105", "at least 0.5 mL")]
    [InlineData("mix --grade garnet --solvent ethanol-95 --cut 2 --pour=0.3mL", "JL105", "at least 0.5 mL")]
    [InlineData("decant 1 --into=0.25mL", "JL105", "at least 0.5 mL")]
    [InlineData("bag add --grade garnet --mass=0.01g --date 2026-01-01", "JL105", "at least 0.1 g")]
    [InlineData("bottle add --solvent ethanol-95 --volume=0.01mL --date 2026-01-01", "JL105", "at least 0.5 mL")]
    public void What_would_be_printed_as_nothing_is_refused_with_the_least_there_is(string line, string code, string least)
    {
        var run = shop.Run(line.Split(' '));
        Assert.Equal((2, ""), (run.ExitCode, run.Result));
        Assert.StartsWith($"error {code}", run.Errors, StringComparison.Ordinal);
        Assert.Contains(least, run.Errors, StringComparison.Ordinal);
        Assert.Equal("1-9", Assert.Single(shop.Json("shelf")["jars"]!.AsArray())!["id"]!.GetValue<string>());
    }

    /// <summary>By hand: ½ mL of a ½ lb cut, 60 g a litre, holds 0.03 g of flakes.</summary>
    [Fact]
    public void A_new_jar_whose_flakes_nobody_could_weigh_is_refused()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "0.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        var run = shop.Run("decant", "2", "--into", "0.5 mL");
        Assert.Equal(2, run.ExitCode);
        Assert.Matches(@"^error JL373.* 0\.0[23]\d* g of flakes", run.Errors);
    }

    /// <summary>The smallest that a message names is one, and nothing of it is shown as 0 in either measure.</summary>
    [Theory]
    [InlineData("calc mix --solvent ethanol-95 --cut 0.01 --pour=83.5mL")]
    [InlineData("calc mix --solvent ethanol-95 --cut 3 --pour=0.5mL")]
    [InlineData("calc thin --from 2 --to 1.989 --of=100mL")]
    public void The_least_there_is_shows_no_nought(string line)
    {
        var run = shop.Run(line.Split(' '));
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.DoesNotMatch(new Regex(@"(?<![0-9.])0 (oz|fl oz|g|mL)"), run.Result);
    }

    [Theory]
    [InlineData("100 mL,,50 mL", "JL369")]
    [InlineData("100 mL,", "JL369")]
    [InlineData(",100 mL", "JL369")]
    [InlineData("100 mL,50", "JL102")]
    [InlineData("100,50 mL,10 mL,", "JL369")]
    [InlineData("100, 50 mL", "JL102")]
    [InlineData("100,200 mL", "JL104")]
    [InlineData("1,5,5 mL", "JL101")]
    [InlineData("", "JL369")]
    public void A_list_of_amounts_with_a_gap_in_it_makes_no_jar(string into, string code)
    {
        var run = shop.Run("decant", "1", "--no-label", "--into", into);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"error {code}: --into", run.Errors, StringComparison.Ordinal);
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Theory]
    [InlineData("0,1 L,100.5 mL , all", 100, 100.5)]
    [InlineData("20 mL,½ fl oz", 20, 14.786765)]
    public void A_decimal_comma_in_a_list_stays_one(string into, double first, double second)
    {
        shop.Json("decant", "1", "--no-label", "--into", into);
        Assert.Equal(first, shop.Json("jar", "2")["jar"]!["volumeMilliliters"]!.GetValue<double>(), 1e-6);
        Assert.Equal(second, shop.Json("jar", "3")["jar"]!["volumeMilliliters"]!.GetValue<double>(), 1e-6);
    }

    [Theory]
    [InlineData(",50 mL", "JL101")]
    [InlineData("1.000 mL", "JL104")]
    [InlineData("1.500 mL", "JL104")]
    [InlineData("1,000 mL", "JL104")]
    [InlineData("NaN mL", "JL101")]
    [InlineData("1e308 mL", "JL102")]
    [InlineData("-1 mL", "JL101")]
    [InlineData("١٢ mL", "JL101")]
    [InlineData("1 000 mL", "JL102")]
    public void A_number_that_could_be_two_or_is_none_is_refused(string volume, string code) =>
        Assert.StartsWith($"error {code}: ", shop.Run("calc", "thin", "--from", "3", "--to", "1", "--of", volume).Errors, StringComparison.Ordinal);

    [Theory]
    [InlineData("473.176 mL")]
    [InlineData("0.500 L")]
    [InlineData("1.500 L")]
    [InlineData(".5 L")]
    [InlineData("0,500 L")]
    public void A_number_that_is_one_is_read(string volume) =>
        Assert.Equal(0, shop.Run("calc", "thin", "--from", "3", "--to", "1", "--of", volume).ExitCode);

    [Fact]
    public void What_leaves_less_than_can_be_measured_takes_all()
    {
        shop.Json("decant", "1", "--no-label", "--into", "20 mL");
        Assert.Equal(0, shop.Run("use", "2", "19.8 mL").ExitCode);
        Assert.Equal("discarded", shop.Json("jar", "2")["jar"]!["state"]!.GetValue<string>());
    }
}
