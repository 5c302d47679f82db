using JarLabel.Tests.Render.Pictures;
using JarLabel.Web.Serving;
using Microsoft.AspNetCore.Http;

namespace JarLabel.Tests.Web;

/// <summary>What somebody may send instead of a photo, and how: nothing of it takes the server down or keeps it from others.</summary>
public sealed class HostilePhotoTests : IDisposable
{
    private const string Boundary = "part";

    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("ffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff")]
    public async Task Without_the_forms_mark_no_photo_is_read(string token)
    {
        var page = await shop.Photo(OddFiles.Code("BAG 1-9").File(), token);
        Assert.Equal(403, page.Status);
        Assert.Contains("JL604", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Take the photo once more", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_mark_behind_the_photo_is_none()
    {
        var token = await Token();
        Assert.Contains("JL661", (await Send(Parts(("photo", [1, 2, 3]), ("token", Encoding.ASCII.GetBytes(token))))).Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://shop.example", 403, "JL603")]
    [InlineData(null, 403, "JL603")]
    public async Task A_photo_from_another_site_is_not_taken(string? origin, int status, string code)
    {
        var page = await Send(Parts(("token", Encoding.ASCII.GetBytes(await Token())), ("photo", OddFiles.Code("JAR 1-9.1").File())), origin: origin);
        Assert.Equal(status, page.Status);
        Assert.Contains(code, page.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/scan", "image/jpeg")]
    [InlineData("/scan", "multipart/form-data")]
    [InlineData("/scan", "multipart/mixed; boundary=part")]
    [InlineData("/J/1-9/note", "multipart/form-data; boundary=part")]
    [InlineData("/mix", "multipart/form-data; boundary=part")]
    public async Task Only_the_form_of_photos_takes_one_and_only_as_a_form(string path, string kind)
    {
        var page = await Send(Parts(("token", Encoding.ASCII.GetBytes(await Token())), ("photo", [1, 2, 3])), path, kind);
        Assert.Equal(415, page.Status);
        Assert.Contains("JL610", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_photo_or_none_is_told()
    {
        var token = Encoding.ASCII.GetBytes(await Token());
        foreach (var sent in (byte[][])[Parts(("token", token), ("photo", [])), Parts(("token", token)), Parts(("token", token), ("other", [1, 2, 3]))])
        {
            var page = await Send(sent);
            Assert.Equal(422, page.Status);
            Assert.Contains("JL661", page.Seen, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_picture_of_two_hundred_million_dots_is_refused_by_its_head()
    {
        var page = await shop.Photo(PngFile.HeadOf(20_000, 10_000, 8, PngFile.Colour));
        Assert.Equal(422, page.Status);
        Assert.Contains("JL181", page.Seen, StringComparison.Ordinal);
        Assert.Contains("20000 × 10000", page.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(21)]
    [InlineData(70)]
    public async Task A_photo_that_is_too_large_is_refused_in_words(int megabytes)
    {
        var page = await shop.Photo(new byte[megabytes << 20]);
        Assert.Equal(413, page.Status);
        Assert.Contains("JL660", page.Seen, StringComparison.Ordinal);
        Assert.Contains("20 MB", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photo_that_ends_before_its_form_does_is_told()
    {
        var whole = Parts(("token", Encoding.ASCII.GetBytes(await Token())), ("photo", OddFiles.Code("JAR 1-9.1").File()));
        var page = await Send(whole[..(whole.Length / 2)]);
        Assert.Equal(400, page.Status);
        Assert.Contains("JL662", page.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(200)]
    public async Task Heads_of_parts_that_are_none_end_with_a_problem(int length)
    {
        var page = await Send([.. Encoding.ASCII.GetBytes($"--{Boundary}\r\n{new string('x', length)}\r\n{new string('y', 40_000)}")]);
        Assert.Equal(400, page.Status);
        Assert.Contains("JL662", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photo_that_hardly_moves_is_cut_off_and_others_are_served_meanwhile()
    {
        using var slow = await Begun(IPAddress.Loopback, await Token(), TestContext.Current.CancellationToken);
        Assert.Equal(303, (await shop.Photo(OddFiles.Code("JAR 1-9.1").File())).Status);
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromSeconds(20));
        var answer = await new StreamReader(slow, Encoding.UTF8).ReadToEndAsync(patience.Token);
        Assert.StartsWith("HTTP/1.1 400 ", answer, StringComparison.Ordinal);
        Assert.Contains("JL663", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_host_that_sends_many_photos_at_once_leaves_room_for_another()
    {
        var stop = TestContext.Current.CancellationToken;
        var token = await Token();
        using var one = await Begun(IPAddress.Loopback, token, stop);
        using var other = await Begun(IPAddress.Loopback, token, stop);
        await Task.Delay(500, stop);
        var third = await shop.Photo(OddFiles.Code("JAR 1-9.1").File());
        Assert.Equal(503, third.Status);
        Assert.Contains("JL664", third.Seen, StringComparison.Ordinal);
        shop.ComeFrom("127.0.0.2");
        Assert.Equal(303, (await shop.Photo(OddFiles.Code("JAR 1-9.1").File())).Status);
    }

    [Fact]
    public async Task Who_goes_away_in_the_middle_is_forgotten()
    {
        var token = await Token();
        for (var i = 0; i < 8; i++)
        {
            using var gone = await Begun(IPAddress.Loopback, token, TestContext.Current.CancellationToken);
        }

        for (var tries = 0; tries < 100 && (await shop.Photo(OddFiles.Code("JAR 1-9.1").File())).Status != 303; tries++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal(303, (await shop.Photo(OddFiles.Code("JAR 1-9.1").File())).Status);
        Assert.Empty(shop.Said);
    }

    [Fact]
    public async Task Codes_are_looked_for_only_so_long()
    {
        using var photos = new Photos { Looking = TimeSpan.FromTicks(1) };
        var request = new DefaultHttpContext().Request;
        request.ContentType = $"multipart/form-data; boundary={Boundary}";
        using var body = new MemoryStream(Parts(("token", [1]), ("photo", PngFile.Plain(4000, 4000))));
        request.Body = body;
        var (codes, status, problems) = await photos.Read(request, IPAddress.Loopback, _ => true);
        Assert.Empty(codes);
        Assert.Equal((422, "JL665"), (status, Assert.Single(problems).Code));
    }

    [Fact]
    public async Task A_stranger_on_the_network_sends_nothing()
    {
        using var lan = new WebShop(IPAddress.Loopback, open: true);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/scan") { Content = new ByteArrayContent(Parts(("photo", new byte[100_000]))) };
        request.Content.Headers.TryAddWithoutValidation("Content-Type", $"multipart/form-data; boundary={Boundary}");
        request.Headers.Add("Origin", $"http://{lan.Host}");
        var page = await lan.Send(request);
        Assert.Equal(401, page.Status);
        Assert.Contains("JL605", page.Seen, StringComparison.Ordinal);
        Assert.Equal("/pair?to=/scan", (await lan.Get("/scan")).Location);
    }

    private async Task<string> Token() => WebShop.Hidden((await shop.Get("/scan")).Text).First(field => field.Name == "token").Value;

    private Task<Page> Send(byte[] body, string path = "/scan", string kind = $"multipart/form-data; boundary={Boundary}", string? origin = "")
    {
        var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new ByteArrayContent(body) };
        request.Content.Headers.TryAddWithoutValidation("Content-Type", kind);
        if (origin is not null)
        {
            request.Headers.Add("Origin", origin.Length == 0 ? $"http://{shop.Host}" : origin);
        }

        return shop.Send(request);
    }

    /// <summary>A photo that begins and does not go on.</summary>
    private async Task<Stream> Begun(IPAddress from, string token, CancellationToken stop)
    {
        var stream = await WebShop.Connect(from, shop.Address.Port, stop);
        var body = Parts(("token", Encoding.ASCII.GetBytes(token)), ("photo", [1, 2, 3]));
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"POST /scan HTTP/1.1\r\nHost: {shop.Host}\r\nOrigin: http://{shop.Host}\r\nConnection: close\r\nContent-Type: multipart/form-data; boundary={Boundary}\r\nContent-Length: 1000000\r\n\r\n"), stop);
        await stream.WriteAsync(body.AsMemory(0, body.Length - Boundary.Length - 8), stop);
        return stream;
    }

    private static byte[] Parts(params (string Name, byte[] Bytes)[] parts) =>
    [
        .. parts.SelectMany(part => (byte[])[.. Encoding.ASCII.GetBytes($"--{Boundary}\r\nContent-Disposition: form-data; name=\"{part.Name}\"{(part.Name == "photo" ? "; filename=\"photo.jpg\"" : "")}\r\n\r\n"), .. part.Bytes, .. "\r\n"u8]),
        .. Encoding.ASCII.GetBytes($"--{Boundary}--\r\n"),
    ];
}
