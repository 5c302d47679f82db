namespace JarLabel.Tests.Render.Pictures;

/// <summary>Pictures of every kind that a phone, a scanner or a program may store a code in.</summary>
public sealed class OddPictureTests : IDisposable
{
    private static readonly Dictionary<string, Func<Picture, byte[]>> Kinds = new(StringComparer.Ordinal)
    {
        ["JPEG of greys"] = picture => picture.File(SKEncodedImageFormat.Jpeg),
        ["WebP"] = picture => picture.File(SKEncodedImageFormat.Webp),
        ["PNG of one bit"] = OddFiles.OneBit,
        ["PNG of sixteen bits"] = OddFiles.SixteenBit,
        ["PNG on clear ground"] = OddFiles.Clear,
        ["animated GIF"] = OddFiles.AnimatedGif,
        ["animated WebP"] = OddFiles.AnimatedWebP,
        ["JPEG lying on its side"] = picture => OddFiles.Turned(picture.File(SKEncodedImageFormat.Jpeg), 8),
    };

    private readonly ScratchFolder folder = new();

    public static TheoryData<string> AllKinds() => [.. Kinds.Keys];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void A_code_is_read_from_a_file_of_each_kind(string kind) =>
        Assert.Equal([Samples.Payload], Read(Kinds[kind](OddFiles.Code(Samples.Payload))).Require());

    [Theory]
    [InlineData("jpegcmyk")]
    [InlineData("pngmono")]
    [InlineData("png48")]
    [InlineData("jpeggray")]
    [InlineData("bmp16m")]
    [InlineData("png256")]
    public void A_code_is_read_from_a_picture_that_another_program_stored(string device)
    {
        File.WriteAllBytes(folder["label.pdf"], Samples.Pdf(Samples.Label()));
        OutsideProgram.Ghostscript.Run("-q", "-dBATCH", "-dNOPAUSE", "-dSAFER", $"-sDEVICE={device}", "-r300", $"-sOutputFile={folder["label"]}", folder["label.pdf"]);
        Assert.Equal([Samples.Payload], QrReader.ReadFile(folder["label"]).Require());
    }

    [Fact]
    public void What_a_photo_that_is_cut_off_still_shows_is_read()
    {
        var whole = Picture.Tiled(1, OddFiles.Code("JAR 1-9.1"), OddFiles.Code("JAR 2-7.1").Grained(9, 1)).File(SKEncodedImageFormat.Jpeg);
        Assert.Equal(["JAR 1-9.1"], Read(whole[..(whole.Length * 2 / 3)]).Require());
        Assert.All(Enumerable.Range(0, 60), i =>
        {
            var read = Read(whole[..(whole.Length * i / 60)]);
            Assert.True(read.Ok || read.Problems[0].Code is "JL180" or "JL182");
        });
    }

    [Theory]
    [InlineData(1, "AAA BBB")]
    [InlineData(3, "BBB AAA")]
    [InlineData(6, "AAA BBB")]
    [InlineData(8, "BBB AAA")]
    public void Codes_are_told_from_the_top_of_the_picture_as_it_is_shown(byte orientation, string order)
    {
        // Stored one under the other for a picture that stands or is upside down, and one beside the other for one that lies.
        var photo = Picture.Tiled(orientation < 5 ? 1 : 2, OddFiles.Code("AAA"), OddFiles.Code("BBB"));
        Assert.Equal(order.Split(' '), Read(OddFiles.Turned(photo.File(SKEncodedImageFormat.Jpeg), orientation)).Require());
    }

    [Theory]
    [InlineData("\0\0\0\u0018ftypheic", "HEIC")]
    [InlineData("\0\0\0\u0018ftypmif1", "HEIC")]
    [InlineData("\0\0\0\u0018ftypavif", "AVIF")]
    [InlineData("\0\0\0\u0018ftypqt  ", "film")]
    [InlineData("%PDF-1.7\n1 0 obj", "PDF")]
    [InlineData("II*\0\x08\0\0\0\0\0\0\0", "TIFF")]
    public void A_kind_that_is_not_read_is_named_with_what_to_do(string head, string named)
    {
        var problem = Assert.Single(Read([.. Encoding.Latin1.GetBytes(head), .. new byte[40]]).Problems);
        Assert.Equal("JL380", problem.Code);
        Assert.Contains(named, problem.Message, StringComparison.Ordinal);
        Assert.Contains("photo.jpg", problem.Message, StringComparison.Ordinal);
    }

    private static Result<string[]> Read(byte[] photo)
    {
        using var stream = new MemoryStream(photo);
        return QrReader.Read(stream, "photo");
    }
}
