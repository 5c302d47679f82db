namespace JarLabel.Tests.Labels;

public class BenchAmountTests
{
    [Theory]
    [InlineData(62.904, "62.9 g", "2.2 oz")]
    [InlineData(113.398, "113 g", "4 oz")]
    [InlineData(56.699, "56.7 g", "2 oz")]
    [InlineData(453.592, "454 g", "1 lb")]
    [InlineData(566.99, "567 g", "1 lb 4 oz")]
    [InlineData(1360.777, "1.36 kg", "3 lb")]
    [InlineData(4.2, "4.2 g", "0.15 oz")]
    [InlineData(453.4, "453 g", "1 lb")]
    public void A_weight_is_shown_as_a_scale_shows_it(double grams, string metric, string us)
    {
        Assert.Equal(metric, BenchAmount.Metric(Mass.FromGrams(grams)));
        Assert.Equal(us, BenchAmount.Us(Mass.FromGrams(grams)));
    }

    [Theory]
    [InlineData(350, "350 mL", "11.8 fl oz")]
    [InlineData(473.176473, "473 mL", "1 pt")]
    [InlineData(236.588, "237 mL", "½ pt")]
    [InlineData(709.76, "710 mL", "¾ qt")]
    [InlineData(946.352946, "946 mL", "1 qt")]
    [InlineData(1892.7, "1.89 L", "½ gal")]
    [InlineData(3785.41, "3.79 L", "1 gal")]
    [InlineData(402.5, "403 mL", "13.6 fl oz")]
    [InlineData(12.3, "12.5 mL", "0.4 fl oz")]
    public void A_volume_is_shown_as_a_measure_shows_it(double milliliters, string metric, string us)
    {
        Assert.Equal(metric, BenchAmount.Metric(Volume.FromMilliliters(milliliters)));
        Assert.Equal(us, BenchAmount.Us(Volume.FromMilliliters(milliliters)));
    }

    [Theory]
    [InlineData(1.5, "1½")]
    [InlineData(2, "2")]
    [InlineData(0.5, "½")]
    [InlineData(0.66667, "⅔")]
    [InlineData(3.75, "3¾")]
    [InlineData(1.974, "1.97")]
    [InlineData(1.999, "2")]
    [InlineData(0.05, "0.05")]
    public void A_cut_is_written_with_one_fraction_glyph_or_in_decimals(double value, string written) =>
        Assert.Equal(written, VulgarFraction.Of(value));
}
