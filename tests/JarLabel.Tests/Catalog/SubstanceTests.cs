namespace JarLabel.Tests.Catalog;

public class SubstanceTests
{
    /// <summary>Molar mass by hand from the formula: ethanol C2H6O, butanone C4H8O, denatonium benzoate C28H34N2O3, and so on.</summary>
    public static TheoryData<string, double> MolarMasses { get; } = new()
    {
        { "ethanol", 46.069 },
        { "water", 18.015 },
        { "propan-2-ol", 60.096 },
        { "methanol", 32.042 },
        { "butanone", 72.107 },
        { "acetone", 58.080 },
        { "1-butanol", 74.123 },
        { "denatonium", 446.591 },
        { "methyl-isobutyl-ketone", 100.161 },
        { "ethyl-acetate", 88.106 },
        { "heptane", 100.205 },
        { "1-nitropropane", 89.094 },
        { "2-nitropropane", 89.094 },
        { "methyl-tert-butyl-ether", 88.150 },
        { "methyl-n-butyl-ketone", 100.161 },
        { "2-butanol", 74.123 },
        { "isobutanol", 74.123 },
        { "tert-butanol", 74.123 },
        { "toluene", 92.141 },
    };

    [Theory, MemberData(nameof(MolarMasses)), Cites(References.IupacWeights, "abridged standard atomic weights")]
    public void Molar_mass_follows_from_the_formula(string id, double gramsPerMole) =>
        Assert.Equal(gramsPerMole, (double)Named(id).MolarMass!.Value, 0.01);

    /// <summary>Density in kg/m³ at 20 °C and flash point in °C from sources other than the catalog's own.</summary>
    [Theory, Cites(References.SupplierSheet, "densities and flash points of other makers")]
    [Cites(References.NiteGhs, "1-butanol, flash point 29 °C (ICSC)")]
    [InlineData("ethanol", 789.3, 12.7)]
    [InlineData("propan-2-ol", 785, 12)]
    [InlineData("methanol", 792, 12.2)]
    [InlineData("butanone", 805, -6)]
    [InlineData("acetone", 790, -18)]
    [InlineData("1-butanol", 812, 29)]
    public void Density_and_flash_point_agree_with_other_books(string id, double density, double flash)
    {
        Assert.Equal(density, (double)Named(id).Density!.Value, 2.5);
        Assert.InRange((double)Named(id).Flash!.Value, flash - 4, flash + 1);
    }

    /// <summary>Closed cup, °C; where books differ the lower one stands in the catalog, or what differs by a degree.</summary>
    [Theory, Cites(References.Nfpa497, "flash points"), Cites(References.Iec60079, "flash points"), Cites(References.NioshPocketGuide, "2-hexanone, 77 °F")]
    [InlineData("ethyl-acetate", -4)]
    [InlineData("heptane", -4)]
    [InlineData("1-nitropropane", 35)]
    [InlineData("methyl-n-butyl-ketone", 25)]
    [InlineData("2-butanol", 24)]
    [InlineData("toluene", 4)]
    [InlineData("acetone", -20)]
    [InlineData("butanone", -10)]
    public void Flash_points_agree_with_another_book(string id, double celsius) => Assert.InRange((double)Named(id).Flash!.Value, celsius - 4, celsius + 1);

    /// <summary>Flash points of which only one book was read; the other figure is from memory.</summary>
    [Theory, CommonPractice]
    [InlineData("methyl-isobutyl-ketone", 14, 18)]
    [InlineData("2-nitropropane", 24, 28)]
    [InlineData("methyl-tert-butyl-ether", -33, -25)]
    [InlineData("isobutanol", 27, 28)]
    [InlineData("tert-butanol", 10, 15)]
    [InlineData("gasoline", -46, -38)]
    [InlineData("naphtha", -40, 0)]
    [InlineData("kerosene", 38, 72)]
    public void Flash_points_lie_where_suppliers_print_them(string id, double least, double most) => Assert.InRange((double)Named(id).Flash!.Value, least, most);

    /// <summary>g/mL: NIOSH and GESTIS where they were read, supplier sheets from memory for the rest.</summary>
    [Theory, Cites(References.NioshPocketGuide, "2-hexanone, specific gravity 0.81"), Cites(References.Gestis, "2-butanol 0.81; the others from memory of supplier sheets")]
    [InlineData("methyl-n-butyl-ketone", 0.81)]
    [InlineData("2-butanol", 0.81)]
    [InlineData("methyl-isobutyl-ketone", 0.80)]
    [InlineData("ethyl-acetate", 0.90)]
    [InlineData("heptane", 0.684)]
    [InlineData("1-nitropropane", 1.00)]
    [InlineData("2-nitropropane", 0.99)]
    [InlineData("methyl-tert-butyl-ether", 0.74)]
    [InlineData("isobutanol", 0.80)]
    [InlineData("tert-butanol", 0.79)]
    [InlineData("toluene", 0.867)]
    public void Densities_agree_with_other_books(string id, double gramsPerMilliliter) => Assert.Equal(1000 * gramsPerMilliliter, (double)Named(id).Density!.Value, 5.0);

    [Theory, Cites(References.Iec60079, "lower limits"), Cites(References.Nfpa497, "lower and upper limits")]
    [InlineData("methyl-isobutyl-ketone", 1.2, 8.0)]
    [InlineData("ethyl-acetate", 2.0, 12.8)]
    [InlineData("heptane", 0.85, 6.7)]
    [InlineData("2-nitropropane", 2.6, 11.0)]
    [InlineData("methyl-tert-butyl-ether", 1.6, 8.4)]
    [InlineData("methyl-n-butyl-ketone", 1.2, 9.4)]
    [InlineData("2-butanol", 1.7, 9.8)]
    [InlineData("isobutanol", 1.4, 11.0)]
    [InlineData("tert-butanol", 2.4, 8.0)]
    [InlineData("toluene", 1.1, 7.8)]
    [InlineData("acetone", 2.5, 14.3)]
    [InlineData("butanone", 1.5, 13.4)]
    [InlineData("1-butanol", 1.4, 12.0)]
    public void What_burns_burns_between_the_limits_of_another_book(string id, double lel, double uel)
    {
        Assert.Equal(lel, (double)Named(id).Lel!.Value, 0.15);
        Assert.InRange((double)Named(id).Uel!.Value, 0.8 * uel, uel);
    }

    /// <summary>What sheets list by another name is the same substance.</summary>
    [Theory, CommonPractice]
    [InlineData("MIBK", "methyl-isobutyl-ketone")]
    [InlineData("hexone", "methyl-isobutyl-ketone")]
    [InlineData("hexan-2-one", "methyl-n-butyl-ketone")]
    [InlineData("sec-butanol", "2-butanol")]
    [InlineData("n-heptane", "heptane")]
    [InlineData("mtbe", "methyl-tert-butyl-ether")]
    [InlineData("n-butanol", "1-butanol")]
    public void Substances_are_found_by_the_names_on_data_sheets(string typed, string id) => Assert.Equal(id, Named(typed).Id);

    [Fact, Cites(References.FineWoodworking, "an old painters' manual: 10 lb of shellac in 2 gallons make 3 gallons")]
    public void Ten_pounds_of_dissolved_resin_take_up_a_gallon() =>
        Assert.Equal(10, DissolvedPoundsPerGallon, 0.1);

    [Fact, Cites(References.Cfr27, "21.80 and 21.161, formula 45: 300 lb of shellac in 29.8 gallons are 10.067 lb/gal; by 129.8 gallons to a tenth, 10.05 to 10.08")]
    public void Dissolved_resin_is_as_dense_as_the_regulation_has_it() => Assert.InRange(DissolvedPoundsPerGallon, 300 / 29.85, 300 / 29.75);

    [Theory, CommonPractice]
    [InlineData("unknown")]
    public void What_is_undeclared_is_toxic_by_nobody_knows_how_much(string id) => Assert.True(Named(id).Undeclared);

    [Fact]
    public void Every_substance_has_a_check_row() => Assert.Equal(
        ShopCatalog.Ours.Substances.Ids.Order(StringComparer.Ordinal),
        MolarMasses.Select(row => row.Data.Item1).Concat(["shellac-resin", "unknown", "naphtha", "gasoline", "kerosene"]).Order(StringComparer.Ordinal));

    [Fact]
    public void The_ranges_that_can_burn_are_the_right_way_round() =>
        Assert.All(ShopCatalog.Ours.Substances.Rows.Where(s => s.Lel is not null), s => Assert.True(s.Lel!.Value < (s.Uel?.Value ?? 100)));

    private static double DissolvedPoundsPerGallon =>
        (Density.FromKilogramsPerCubicMeter((double)Named("shellac-resin").Density!.Value) * Volume.FromUsGallons(1)).Pounds;

    private static Substance Named(string id) => ShopCatalog.Ours.Substances.Named(id).Require();
}
