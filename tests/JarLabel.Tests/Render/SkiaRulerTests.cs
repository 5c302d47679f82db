namespace JarLabel.Tests.Render;

public class SkiaRulerTests
{
    private readonly SkiaRuler ruler = new();

    [Theory]
    [InlineData(Face.Regular)]
    [InlineData(Face.SemiBold)]
    [InlineData(Face.Bold)]
    public void Figures_are_equally_wide_so_that_columns_of_them_stand(Face face)
    {
        var widths = "0123456789".Select(figure => ruler.Width(figure.ToString(), face, 10)).Distinct();
        Assert.Single(widths);
    }

    [Theory]
    [InlineData("Garnet", Face.Regular, 9)]
    [InlineData("mixed 2026", Face.SemiBold, 7.5)]
    [InlineData("Hinschen", Face.Bold, 24)]
    public void A_line_without_kerning_pairs_is_as_wide_as_the_sum_of_its_letters_in_the_font_file(string text, Face face, double points)
    {
        var units = text.Sum(letter => AdvanceFromHmtx(letter, face));
        Assert.Equal(units / 1000.0 * points * 25.4 / 72, ruler.Width(text, face, points), 0.02 * points);
    }

    [Fact]
    public void A_kerned_pair_is_narrower_than_its_letters() =>
        Assert.True(ruler.Width("AV", Face.Bold, 100) < ruler.Width("A", Face.Bold, 100) + ruler.Width("V", Face.Bold, 100) - 1);

    [Theory]
    [InlineData("jar ☐ 1", "☐")]
    [InlineData("⚠ hot", "⚠")]
    [InlineData("shelf 👩‍🔧 two", "👩‍🔧")]
    [InlineData("שלום", "ש")]
    [InlineData("25 \u03BCm with a Greek letter", "\u03BC")]
    [InlineData("one\ntwo", "\n")]
    [InlineData("one\ttwo", "\t")]
    public void The_first_character_without_a_glyph_is_named_whole(string text, string missing) =>
        Assert.Equal(missing, ruler.FirstMissing(text, Face.Regular));

    [Theory]
    [InlineData("1½ lb ≈ 180 g/L · 20 °C · 25 µm · ≤ ≥ × − – — é ß Å")]
    [InlineData("¼ ⅓ ½ ⅔ ¾ ⅛ ⅜ ⅝ ⅞")]
    [InlineData("")]
    public void What_labels_say_has_its_glyphs_in_every_weight(string text) =>
        Assert.All(Enum.GetValues<Face>(), face => Assert.Null(ruler.FirstMissing(text, face)));

    [Fact]
    public void Capitals_stand_between_small_letters_and_the_reach_of_the_face()
    {
        var measures = ruler.Measures(Face.Regular);
        Assert.InRange(measures.XHeight, 0.50, 0.54);
        Assert.InRange(measures.CapHeight, 0.68, 0.72);
        Assert.InRange(measures.Ascent, measures.CapHeight, 1.1);
        Assert.InRange(measures.Descent, 0.2, 0.4);
    }

    [Fact]
    public async Task Rulers_on_many_threads_agree()
    {
        var widths = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(
            () => Enumerable.Range(0, 500).Sum(i => new SkiaRuler().Width($"jar {i} AVATAR", (Face)(i % 3), 9)))));
        Assert.Single(widths.Distinct());
    }

    // Read with Skia, from its own reading of the file's hmtx table: not the library that the ruler shapes with.
    private static int AdvanceFromHmtx(char letter, Face face)
    {
        var name = face switch { Face.Regular => "400Regular", Face.SemiBold => "600SemiBold", _ => "700Bold" };
        using var stream = typeof(SkiaRuler).Assembly.GetManifestResourceStream($"fonts/IBMPlexSansCondensed_{name}.ttf");
        using var typeface = SKTypeface.FromStream(stream);
        using var font = new SKFont(typeface, 1000) { LinearMetrics = true, Hinting = SKFontHinting.None };
        return (int)Math.Round(font.MeasureText(letter.ToString()));
    }
}
