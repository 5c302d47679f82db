using JarLabel.Tests.Render.Pictures;

namespace JarLabel.Tests.Render;

public sealed class QrReaderTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("HTTP://192.168.1.20:5080/J/142-5.1")]
    [InlineData("garnet, 1.5 lb cut, mixed 9 Mar 2026, jar 142-5")]
    public void It_reads_a_code_that_another_program_made(string payload)
    {
        OutsideProgram.QrEncode.Run("-o", folder["code.png"], "-l", "M", "-s", "5", payload);
        Assert.Equal([payload], QrReader.ReadFile(folder["code.png"]).Require());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(90)]
    [InlineData(135)]
    [InlineData(180)]
    [InlineData(271)]
    public void It_reads_a_label_turned_any_way(int degrees) =>
        Assert.Equal([Samples.Payload], Read(Photo(degrees, Samples.Payload)).Require());

    [Fact]
    public void It_reads_all_the_codes_of_a_shelf_from_the_top()
    {
        string[] payloads = ["HTTP://192.168.1.20:5080/J/142-5.1", "HTTP://192.168.1.20:5080/J/143-3.2", "HTTP://192.168.1.20:5080/J/144-1.1"];
        Assert.Equal(payloads, Read(Photo(3, payloads)).Require());
    }

    [Fact]
    public void A_picture_without_a_code_is_told_apart_from_a_file_that_is_no_picture()
    {
        Assert.Equal("JL182", Assert.Single(Read(Photo(0)).Problems).Code);
        Assert.Equal("JL180", Assert.Single(Read(Encoding.UTF8.GetBytes("jar 142-5")).Problems).Code);
        Assert.Equal("JL180", Assert.Single(Read([]).Problems).Code);
    }

    [Fact]
    public void A_damaged_picture_is_a_problem_and_no_crash() =>
        Assert.NotEmpty(Read(Photo(0, Samples.Payload)[..200]).Problems);

    [Fact]
    public void A_small_file_that_unpacks_to_gigabytes_is_refused()
    {
        var huge = Photo(0);
        new byte[] { 0, 0, 0xC3, 0x50, 0, 0, 0xC3, 0x50 }.CopyTo(huge, 16);
        System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(huge.AsSpan(29), PngFile.Crc(huge.AsSpan(12, 17)));
        var problem = Assert.Single(Read(huge).Problems);
        Assert.Equal("JL181", problem.Code);
        Assert.Contains("50000 × 50000", problem.Message, StringComparison.Ordinal);
    }

    private static Core.Result<string[]> Read(byte[] photo)
    {
        using var stream = new MemoryStream(photo);
        return QrReader.Read(stream, "photo.png");
    }

    // Labels one under the other on a grey bench, the camera turned.
    private static byte[] Photo(int degrees, params string[] payloads)
    {
        using var photo = new SKBitmap(1200, 1200);
        using (var canvas = new SKCanvas(photo))
        {
            canvas.Clear(new SKColor(0xFFB0A890));
            canvas.RotateDegrees(degrees, 600, 600);
            for (var i = 0; i < payloads.Length; i++)
                DrawLabel(canvas, payloads[i], 350, 600 + (i * 260) - (payloads.Length * 130));
        }

        using var png = photo.Encode(SKEncodedImageFormat.Png, 100);
        return png.ToArray();
    }

    private static void DrawLabel(SKCanvas canvas, string payload, float x, float y)
    {
        using var stream = new MemoryStream();
        PngRenderer.Write(stream, Samples.Label(payload), 125);
        using var label = SKBitmap.Decode(stream.ToArray());
        canvas.DrawBitmap(label, x, y, new SKSamplingOptions(SKFilterMode.Linear));
    }
}
