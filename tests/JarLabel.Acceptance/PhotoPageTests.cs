using JarLabel.Tests.Render.Pictures;

namespace JarLabel.Acceptance;

/// <summary>Labels that the program printed, photographed and sent from a telephone's browser.</summary>
public sealed class PhotoPageTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private readonly ServedShop server;

    public PhotoPageTests(Browser browser)
    {
        this.browser = browser;
        foreach (var grade in (string[])["garnet", "blonde"])
        {
            Assert.Equal(0, shop.Run("mix", "--grade", grade, "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label").ExitCode);
        }

        server = new(shop.Start("serve", "--port", "0", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    [Theory]
    [InlineData(true, 1)]
    [InlineData(true, 6)]
    [InlineData(false, 6)]
    public async Task A_photo_of_one_label_opens_its_jar_with_script_and_without(bool script, byte orientation)
    {
        var phone = await browser.Open(server.Address, script: script);
        await phone.GotoAsync("/");
        await phone.GetByRole(AriaRole.Link, new() { Name = "Scan a label" }).TapAsync();
        await Send(phone, Photographed(orientation, "2"), script);
        await phone.WaitForURLAsync("**/J/2-7.1");
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("londe");
        await phone.GoBackAsync();
        await Assertions.Expect(phone.Locator("#photo")).ToBeEnabledAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Status)).ToHaveTextAsync("");
    }

    [Fact]
    public async Task Two_labels_side_by_side_are_a_list_from_which_each_is_opened()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/scan");
        await Send(phone, Photographed(1, "1", "2"), script: true);
        await Assertions.Expect(phone.Locator("#found")).ToHaveTextAsync("In the photo: 2 jars");
        foreach (var (jar, address) in ((string, string)[])[("jar 1-9", "**/J/1-9.1"), ("jar 2-7", "**/J/2-7.1")])
        {
            await phone.GetByRole(AriaRole.Link, new() { NameRegex = new(jar) }).TapAsync();
            await phone.WaitForURLAsync(address);
            await phone.GoBackAsync();
            await Assertions.Expect(phone.Locator("#found")).ToBeVisibleAsync();
        }
    }

    [Fact]
    public async Task While_it_is_read_that_is_said_and_then_what_helps()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/scan");
        await phone.EvaluateAsync("const says = document.querySelector('[role=status]'); new MutationObserver(() => sessionStorage.setItem('said', says.textContent)).observe(says, { childList: true })");
        var white = Path.Combine(shop.Folder, "white.png");
        await File.WriteAllBytesAsync(white, PngFile.Plain(800, 600, PngFile.Colour), TestContext.Current.CancellationToken);
        await phone.Locator("#photo").SetInputFilesAsync(white);
        await Assertions.Expect(phone.GetByRole(AriaRole.Alert)).ToContainTextAsync("JL182");
        Assert.Equal("Reading the photo", await phone.EvaluateAsync<string>("sessionStorage.getItem('said')"));
        await Assertions.Expect(phone.GetByRole(AriaRole.Alert)).ToBeFocusedAsync();
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("Go closer");

        // The number beside the code leads on from there.
        await phone.GetByLabel("Jar's number").FillAsync("1-9");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Show" }).TapAsync();
        await Assertions.Expect(phone.Locator("#live")).ToContainTextAsync("arnet");
    }

    [Fact]
    public async Task A_photo_that_is_too_large_is_not_even_sent()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/scan");
        var large = Path.Combine(shop.Folder, "large.jpg");
        await File.WriteAllBytesAsync(large, new byte[21 << 20], TestContext.Current.CancellationToken);
        await phone.Locator("#photo").SetInputFilesAsync(large);
        await Assertions.Expect(phone.GetByRole(AriaRole.Status)).ToContainTextAsync("larger than 20 MB");
        Assert.EndsWith("/scan", phone.Url, StringComparison.Ordinal);
    }

    private static async Task Send(IPage phone, string photo, bool script)
    {
        await phone.Locator("#photo").SetInputFilesAsync(photo);
        if (!script)
        {
            await phone.GetByRole(AriaRole.Button, new() { Name = "Read the photo" }).TapAsync();
        }
    }

    /// <summary>Labels of jars as they print, made a JPEG that the camera says how to turn (Exif orientation: 6 for a quarter to the right).</summary>
    private string Photographed(byte orientation, params string[] jars)
    {
        var (sheet, photo) = (Path.Combine(shop.Folder, "labels.pdf"), Path.Combine(shop.Folder, "photo"));
        Assert.Equal(0, shop.Run(["label", .. jars, "--out", sheet, "--force"]).ExitCode);
        OutsideProgram.PdfToPpm.Run("-r", "200", "-jpeg", "-singlefile", sheet, photo);
        byte[] exif = [.. "Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0"u8, orientation, 0, 0, 0, 0, 0, 0];
        File.WriteAllBytes(photo + ".jpg", [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. File.ReadAllBytes(photo + ".jpg").AsSpan(2)]);
        return photo + ".jpg";
    }
}
