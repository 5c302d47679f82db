namespace JarLabel.Tests.Render.Photos;

/// <summary>What README says under "Limits" of photos. Labels are composed and rendered by our own code, then photographed by a camera that is reckoned here,
/// each several times and every time turned another way. What lies beyond a limit may still be read, but not surely.</summary>
public class PhotoLimitTests(ITestOutputHelper output)
{
    private const int Photos = 3;

    private static readonly Dictionary<string, PrintedLabel> Labels = new(StringComparer.Ordinal)
    {
        ["address"] = PrintedDesign.Of("standard", "HTTP://192.168.1.20:5080/J/142-5.1"),
        ["text"] = PrintedDesign.Of("full", SampleLabels.All["longest"].Code!),
    };

    /// <summary>Where reading was found to stop, each alone and then together as at a bench.</summary>
    private static readonly Dictionary<string, Func<PrintedLabel, int, Camera>> Limits = new(StringComparer.Ordinal)
    {
        ["small: 2.5 dots a module"] = (_, i) => new Camera { DotsPerModule = 2.5, Turn = i * 47 },
        ["from aside: 55°"] = (_, i) => new Camera { Tilt = 55, TiltAxis = i * 60, Turn = i * 17 },
        ["round a jar: 80° of it, straight on"] = (label, i) => new Camera { Jar = JarWith(label, 80), Turn = i * 47 },
        ["round a jar: 40° of it, from aside 20°"] = (label, i) => new Camera { Jar = JarWith(label, 40), Turn = i * 47, Tilt = 20, TiltAxis = i * 60 },
        ["round a jar: 30° of it, from aside 35°"] = (label, i) => new Camera { Jar = JarWith(label, 30), Turn = i * 47, Tilt = 35, TiltAxis = i * 60 },
        ["blurred: 0.35 of a module"] = (_, i) => new Camera { Blur = 0.35, Noise = 3, Turn = i * 47, Seed = i },
        ["grain: 40 of 255"] = (_, i) => new Camera { Noise = 40, Turn = i * 47, Seed = i },
        ["dim: white is 30 of 255"] = (_, i) => new Camera { White = 30, Noise = 4, Turn = i * 47, Seed = i },
        ["light from one side: a tenth left at the other"] = (_, i) => new Camera { Shade = 0.1, Noise = 3, Turn = i * 47, Seed = i },
        ["all at once on a jar of 80 mm"] = (_, i) => new Camera { Jar = 80, Tilt = 20, TiltAxis = i * 60, Turn = (i * 20) - 30, Blur = 0.2, Noise = 8, White = 120, Shade = 0.5, Seed = i },
    };

    private static readonly Dictionary<string, Camera> Beyond = new(StringComparer.Ordinal)
    {
        ["small: 0.6 dots a module"] = new() { DotsPerModule = 0.6 },
        ["from aside: 80°"] = new() { Tilt = 80, TiltAxis = 30 },
        ["round a jar of 10 mm"] = new() { Jar = 10 },
        ["blurred: 1 module"] = new() { Blur = 1, Noise = 3 },
        ["grain: 300 of 255"] = new() { Noise = 300 },
        ["dim: white is 2 of 255"] = new() { White = 2, Noise = 4 },
    };

    public static TheoryData<string, string> Within() => [.. Labels.Keys.SelectMany(label => Limits.Keys.Select(limit => (label, limit)))];

    public static TheoryData<string, string> TooFar() => [.. Labels.Keys.SelectMany(label => Beyond.Keys.Select(limit => (label, limit)))];

    [Theory]
    [MemberData(nameof(Within))]
    public void A_photo_at_the_limit_is_read(string label, string limit)
    {
        var printed = Labels[label];
        Assert.All(Enumerable.Range(1, Photos), i => Assert.Equal([printed.Payload], Read(Limits[limit](printed, i).Take(printed), SKEncodedImageFormat.Jpeg)));
    }

    [Theory]
    [MemberData(nameof(TooFar))]
    public void A_photo_far_beyond_is_told_to_show_no_code_and_never_read_as_another(string label, string limit) =>
        Assert.Empty(Read(Beyond[limit].Take(Labels[label]), SKEncodedImageFormat.Jpeg));

    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    public void All_the_jars_of_a_shelf_are_read_from_one_photo(SKEncodedImageFormat format)
    {
        string[] payloads = [.. Enumerable.Range(1, 6).Select(i => $"HTTP://192.168.1.20:5080/J/{i}-7.1")];
        var jars = payloads.Select((payload, i) => new Camera { Jar = 70, Turn = (i * 31) - 60, Tilt = 15, TiltAxis = i * 40, Blur = 0.2, Noise = 6, White = 90 + (i * 20), Seed = i, Field = 2.2 }
            .Take(PrintedDesign.Of("standard", payload)));
        Assert.Equal(payloads, Read(Picture.Tiled(3, [.. jars]), format).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_photo_of_four_megapixels_is_read_before_patience_ends()
    {
        var label = Labels["address"];
        var file = new Camera { DotsPerModule = 12, Field = 6, Jar = 80, Tilt = 15, Noise = 5 }.Take(label).File(SKEncodedImageFormat.Jpeg);
        var since = Stopwatch.GetTimestamp();
        Assert.Equal([label.Payload], Read(file));
        var took = Stopwatch.GetElapsedTime(since);
        output.WriteLine($"{took.TotalSeconds:0.0} s");
        Assert.True(took < TimeSpan.FromSeconds(60), $"It took {took.TotalSeconds:0.0} s.");
    }

    /// <summary>The diameter of a jar, mm, round which the code takes up so many degrees.</summary>
    private static double JarWith(PrintedLabel label, double degrees) => label.CodeSide * 360 / (degrees * Math.PI);

    private static string[] Read(Picture photo, SKEncodedImageFormat format) => Read(photo.File(format));

    private static string[] Read(byte[] photo)
    {
        using var stream = new MemoryStream(photo);
        return QrReader.Read(stream, "photo").TryGet(out var found, out var problems) ? found : "JL182" == Assert.Single(problems).Code ? [] : throw new InvalidOperationException(problems[0].Message);
    }
}
