namespace JarLabel.Acceptance;

/// <summary>The installed browser, without a window. Where there is none, the test that asks for it is skipped.</summary>
public sealed class Browser : IAsyncLifetime
{
    /// <summary>Finger and phone: 390 x 844 at three dots a pixel, with touch.</summary>
    internal const int PhoneWidth = 390;

    /// <summary>How long a page may take on a machine that is busy with other tests, ms.</summary>
    private const float Patience = 30_000;

    private static readonly string? Program = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "chromium")).FirstOrDefault(File.Exists);

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async ValueTask InitializeAsync()
    {
        if (Program is null)
        {
            return;
        }

        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Program,
            Args = Environment.UserName == "root" ? ["--no-sandbox"] : [],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    /// <summary>A browser of its own, with its own cookies.</summary>
    internal async Task<IPage> Open(string address, int width = PhoneWidth, bool dark = false, bool script = true, bool keeps = false)
    {
        if (browser is null)
        {
            Assert.Skip("chromium is not installed (Debian package chromium).");
        }

        var context = await browser.NewContextAsync(new()
        {
            BaseURL = address,
            ViewportSize = new() { Width = width, Height = 844 },
            HasTouch = width <= PhoneWidth,
            IsMobile = width <= PhoneWidth,
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            JavaScriptEnabled = script,

            // What a browser keeps of pages stands between a test and the answers that it changes on their way.
            ServiceWorkers = keeps ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
        });
        return await context.NewPageAsync();
    }
}
