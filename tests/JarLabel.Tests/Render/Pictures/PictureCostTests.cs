namespace JarLabel.Tests.Render.Pictures;

/// <summary>However a picture is made, reading it comes to an end, soon and within its memory. The bounds are wide, for a machine that has other things to do.</summary>
public class PictureCostTests(ITestOutputHelper output)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static readonly Dictionary<string, Func<byte[]>> Pictures = new(StringComparer.Ordinal)
    {
        ["one dot wide"] = () => PngFile.Plain(1, 20_000),
        ["two dots wide"] = () => PngFile.Plain(2, 100_000),
        ["a thousand times as wide as high"] = () => PngFile.Plain(100_000, 100),
        ["thirty thousand times as high as wide"] = () => PngFile.Plain(30, 900_000, PngFile.Colour),
        ["all white, sixty million dots"] = () => PngFile.Plain(7_700, 7_700),
        ["nothing but grain"] = () => new Picture(2_000, 2_000).Grained(120, 3).File(),
        ["nothing but finder patterns"] = () => Finders(1_800).File(),
        ["black and white by turns"] = () => PngFile.Of(4_000, 4_000, 8, PngFile.Grey, y => Row(4_000, x => x % 4 < 2)),
    };

    public static TheoryData<string> WithoutCode() => [.. Pictures.Keys];

    [Theory]
    [MemberData(nameof(WithoutCode))]
    public void A_picture_without_a_code_is_told_soon(string picture)
    {
        var file = Pictures[picture]();
        var since = Stopwatch.GetTimestamp();
        Assert.Equal("JL182", Assert.Single(Read(file).Problems).Code);
        var took = Stopwatch.GetElapsedTime(since);
        output.WriteLine($"{took.TotalSeconds:0.0} s");
        Assert.True(took < Patience, $"It took {took.TotalSeconds:0.0} s.");
    }

    [Fact]
    public void Four_hundred_codes_in_one_picture_are_all_read()
    {
        string[] payloads = [.. Enumerable.Range(1, 400).Select(i => $"JAR {i}-1.1")];
        var photo = Picture.Tiled(20, [.. payloads.Select(payload => OddFiles.Code(payload, margin: 4))]).File();
        var since = Stopwatch.GetTimestamp();
        Assert.Equal(payloads.Order(StringComparer.Ordinal), Read(photo).Require().Order(StringComparer.Ordinal));
        Assert.True(Stopwatch.GetElapsedTime(since) < Patience);
    }

    [Theory]
    [InlineData(PngFile.Grey, 8, false, 8_000, 8_000, 64_000_000, false)]
    [InlineData(PngFile.Colour, 8, false, 7_700, 7_700, 60_000_000, false)]
    [InlineData(PngFile.Colour, 8, false, 8_000, 8_000, 60_000_000, true)]
    [InlineData(PngFile.Colour, 8, true, 6_000, 6_000, 30_000_000, true)]
    [InlineData(PngFile.Colour, 16, true, 5_000, 5_000, 20_000_000, true)]
    public void How_large_a_picture_may_be_follows_from_what_its_file_costs(int kind, int depth, bool interlaced, int width, int height, int allowed, bool refused)
    {
        var problem = Assert.Single(Read(PngFile.HeadOf(width, height, depth, kind, interlaced)).Problems);
        Assert.Equal(refused, problem.Code == "JL181");
        Assert.True(!refused || problem.Message.Contains($"{allowed:N0}", StringComparison.Ordinal), problem.Message);
    }

    [Fact]
    public void A_photo_stored_in_passes_costs_more_than_one_from_top_to_bottom()
    {
        Assert.NotEqual("JL181", Assert.Single(Read(OddFiles.JpegHead(7_000, 7_000, passes: false)).Problems).Code);
        Assert.Equal("JL181", Assert.Single(Read(OddFiles.JpegHead(7_000, 7_000, passes: true)).Problems).Code);
        Assert.NotEqual("JL181", Assert.Single(Read(OddFiles.JpegHead(5_500, 5_500, passes: true)).Problems).Code);
    }

    [Fact]
    public void What_comes_without_end_is_not_read_to_its_end()
    {
        using var endless = new Endless();
        Assert.Equal("JL381", Assert.Single(QrReader.Read(endless, "pipe", TestContext.Current.CancellationToken).Problems).Code);
        Assert.InRange(endless.Given, 1, 100_000_000);
    }

    private static Result<string[]> Read(byte[] photo)
    {
        using var stream = new MemoryStream(photo);
        return QrReader.Read(stream, "photo.png");
    }

    private static byte[] Row(int width, Func<int, bool> white) => [.. Enumerable.Range(0, width).Select(x => (byte)(white(x) ? 255 : 0))];

    // Finder patterns (ISO/IEC 18004) side by side, three dots a module.
    private static Picture Finders(int side)
    {
        var picture = new Picture(side, side);
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var ring = Math.Max(Math.Abs((x / 3 % 9) - 4), Math.Abs((y / 3 % 9) - 4));
                picture[x, y] = ring is 0 or 1 or 3 ? 0 : 255;
            }
        }

        return picture;
    }

    /// <summary>A pipe that never ends.</summary>
    private sealed class Endless : Stream
    {
        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => Given; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill(7);
            Given += count;
            return count;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
