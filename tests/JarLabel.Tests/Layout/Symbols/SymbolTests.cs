using JarLabel.Layout.Symbols;

namespace JarLabel.Tests.Layout.Symbols;

public partial class SymbolTests
{
    // CLP Annex I 1.2.1.1: a black symbol on white in a red frame, a square set at a point.
    [Theory, Cites(References.Clp, "Annex I 1.2.1.1")]
    [InlineData("GHS02")]
    [InlineData("GHS05")]
    [InlineData("GHS06")]
    [InlineData("GHS07")]
    [InlineData("GHS08")]
    public void A_hazard_pictogram_is_black_on_white_in_a_red_square_on_its_point(string code)
    {
        var layers = Symbol.Find(code)!.Layers;
        Assert.Equal((Ink.Red, "M50,0L100,50L50,100L0,50Z"), (layers[0].Ink, layers[0].Data));
        Assert.Equal(Ink.White, layers[1].Ink);
        Assert.Equal(Ink.Black, layers[2].Ink);
        Assert.All(layers.Skip(1), layer => Assert.NotEqual(Ink.Red, layer.Ink));
    }

    // What is inside the frame stays inside: the white square reaches 43.2 from the middle.
    [Fact]
    public void No_pictogram_touches_its_frame()
    {
        foreach (var symbol in Symbol.All.Values.Where(symbol => symbol.Code.StartsWith("GHS", StringComparison.Ordinal)))
            Assert.All(symbol.Layers.Skip(2).SelectMany(layer => Points(layer.Data)), at => Assert.InRange(Math.Abs(at.X - 50) + Math.Abs(at.Y - 50), 0, 43.2));
    }

    // ISO 7010 and ISO 3864-1: prohibition red, mandatory blue, warning yellow with a black band, fire red. From memory.
    [Theory, CommonPractice]
    [InlineData("P002", Ink.Red)]
    [InlineData("P003", Ink.Red)]
    [InlineData("M004", Ink.Blue)]
    [InlineData("M009", Ink.Blue)]
    [InlineData("W016", Ink.Black)]
    [InlineData("W021", Ink.Black)]
    [InlineData("F001", Ink.Red)]
    public void A_sign_has_its_ground_colour(string code, Ink ground) => Assert.Equal(ground, Symbol.Find(code)!.Layers[0].Ink);

    // The poison sign is the skull of the pictogram without its frame: no hazard class is claimed by it.
    [Fact, Cites(References.Cfr16, "1500.14(b)(4): the skull and crossbones symbol")]
    public void The_poison_sign_is_a_bare_skull_in_black_and_white()
    {
        var layers = Symbol.Find("SKULL")!.Layers;
        Assert.Equal(Symbol.Find("GHS06")!.Layers.Skip(2).Select(layer => layer.Ink), layers.Select(layer => layer.Ink));
        Assert.All(layers, layer => Assert.Contains(layer.Ink, (Ink[])[Ink.Black, Ink.White]));
    }

    [Fact]
    public void Every_drawing_stays_in_its_frame() =>
        Assert.All(Symbol.All.Values.SelectMany(symbol => symbol.Layers).SelectMany(layer => Points(layer.Data)), at =>
        {
            Assert.InRange(at.X, 0, 100);
            Assert.InRange(at.Y, 0, 100);
        });

    private static IEnumerable<(double X, double Y)> Points(string data) => Pair().Matches(data).Select(pair =>
        (double.Parse(pair.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(pair.Groups[2].Value, CultureInfo.InvariantCulture)));

    [GeneratedRegex(@"(-?[\d.]+),(-?[\d.]+)")]
    private static partial Regex Pair();
}
