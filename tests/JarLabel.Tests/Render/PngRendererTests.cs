namespace JarLabel.Tests.Render;

public sealed class PngRendererTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(203, 812, 406)]
    [InlineData(300, 1200, 600)]
    [InlineData(600, 2400, 1200)]
    public void The_picture_has_the_papers_dots_and_says_its_resolution(int dpi, int width, int height)
    {
        var png = Png(Samples.Label(), dpi);
        Assert.Equal((width, height), (Number(png, 16), Number(png, 20)));
        Assert.Equal("pHYs"u8.ToArray(), png[37..41]);
        Assert.Equal(dpi, Number(png, 41) * 0.0254, 0.02);
    }

    [Theory]
    [InlineData(203, 4)]
    [InlineData(300, 6)]
    [InlineData(600, 12)]
    public void Each_module_is_a_square_of_whole_dots_all_black_or_all_white(int dpi, int dots)
    {
        var modules = Samples.Code(Samples.Payload);
        var code = new QrMark("code", 5.03, 4.97, dots * 25.4 / dpi, modules);
        using var picture = SKBitmap.Decode(Png(new Page(40, 40, [code]), dpi));
        var (left, top) = FirstBlack(picture);
        for (var i = 0; i < modules.Size * modules.Size; i++)
        {
            var (row, column) = (i / modules.Size, i % modules.Size);
            var expected = modules[row, column] ? SKColors.Black : SKColors.White;
            Assert.All(Square(picture, left + (column * dots), top + (row * dots), dots), dot => Assert.Equal(expected, dot));
        }
    }

    [Fact]
    public void A_one_bit_picture_is_one_bit_in_the_file_and_shows_only_black_and_white()
    {
        var png = Png(Samples.Label(), 203, mono: true);
        Assert.Equal((1, 0), (png[24], png[25]));
        using var picture = SKBitmap.Decode(png);
        Assert.Equal([SKColors.Black, SKColors.White], picture.Pixels.Distinct().OrderBy(dot => dot.Red));
    }

    [Theory]
    [InlineData(Ink.Black, true)]
    [InlineData(Ink.Red, true)]
    [InlineData(Ink.Blue, true)]
    [InlineData(Ink.Green, true)]
    [InlineData(Ink.Orange, false)]
    [InlineData(Ink.Yellow, false)]
    [InlineData(Ink.White, false)]
    public void A_one_bit_printer_prints_the_inks_that_carry_white_drawing(Ink ink, bool black)
    {
        using var picture = SKBitmap.Decode(Png(new Page(10, 10, [new BarMark("panel", 2, 2, 6, 6, ink)]), 203, mono: true));
        Assert.Equal(black ? SKColors.Black : SKColors.White, picture.GetPixel(40, 40));
    }

    [Fact]
    public void An_outline_is_filled_by_the_even_odd_rule()
    {
        using var picture = SKBitmap.Decode(Png(new Page(10, 10, [new PathMark("sign", 0, 0, 0.1, Samples.Diamond, Ink.Red)]), 254));
        Assert.Equal(SKColors.White, picture.GetPixel(50, 50));
        Assert.NotEqual(SKColors.White, picture.GetPixel(50, 5));
        Assert.Equal(SKColors.White, picture.GetPixel(5, 5));
    }

    [Theory]
    [InlineData(203, false)]
    [InlineData(300, true)]
    [InlineData(600, false)]
    public void Zbar_reads_the_code(int dpi, bool mono)
    {
        File.WriteAllBytes(folder["label.png"], Png(Samples.Label(), dpi, mono));
        Assert.Equal(Samples.Payload, OutsideProgram.ZbarImg.Run("--quiet", "--raw", folder["label.png"]).Trim());
    }

    // The face's capitals are 698 thousandths of the type size high (its OS/2 table): 17.73 mm at 72 points, so they begin at 25 - 17.73 mm.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Large_type_comes_out_at_its_size(bool mono)
    {
        var page = new Page(30, 30, [new TextMark("cut", 5, 25, "H", Face.Bold, 72, Ink.Black)]);
        using var picture = SKBitmap.Decode(Png(page, 254, mono));
        Assert.InRange(FirstBlack(picture).Y, 72, 74);
    }

    private static byte[] Png(Page page, int dpi, bool mono = false)
    {
        using var stream = new MemoryStream();
        if (mono)
            PngRenderer.WriteMono(stream, page, dpi);
        else
            PngRenderer.Write(stream, page, dpi);
        return stream.ToArray();
    }

    private static int Number(byte[] png, int at) => BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));

    private static (int X, int Y) FirstBlack(SKBitmap picture)
    {
        var at = Array.FindIndex(picture.Pixels, dot => dot == SKColors.Black);
        return (at % picture.Width, at / picture.Width);
    }

    private static IEnumerable<SKColor> Square(SKBitmap picture, int left, int top, int dots) =>
        Enumerable.Range(0, dots * dots).Select(i => picture.GetPixel(left + (i % dots), top + (i / dots)));
}
