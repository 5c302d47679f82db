namespace JarLabel.Web.Pages;

/// <summary>What stands around every page.</summary>
internal static class Frame
{
    /// <summary>A whole page.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="main">What it is about.</param>
    /// <param name="nav">The links on top.</param>
    /// <param name="script">True for pages whose form computes while one types.</param>
    /// <param name="head">More for the head of a page that is kept as a file; nothing for one that is served.</param>
    internal static string Page(string title, Markup main, Markup nav, bool script = false, Markup head = default) => Html.Of(
        $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1, interactive-widget=resizes-content">
        {head}<title>{title}</title>
        {Html.Own(head.Text is { Length: > 0 } ? "<link rel=\"icon\" href=\"data:,\">" : OnHomeScreen)}
        {Html.Own(head.Text is { Length: > 0 } ? "" : $"<style>{PageAssets.Type}</style>\n")}<style>{Html.Own(PageAssets.Style)}</style>
        {Html.Own(script ? "<script src=\"/bench.js\" defer></script>\n" : "")}</head>
        <body>
        <a class="skip" href="#main">To the content</a>
        <nav class="top" aria-label="Shop">{nav}</nav>
        <main id="main">
        {main}
        </main>
        <footer><p>Local rules, the alcohol's own label and its data sheet come first. Dates are estimates: try a few drops on glass.</p></footer>
        </body>
        </html>

        """).Text;

    private const string OnHomeScreen = """<link rel="icon" href="/icon-192.png"><link rel="apple-touch-icon" href="/icon-180.png"><link rel="manifest" href="/jars.webmanifest">""";

    /// <summary>When a page is of; it is seen on paper.</summary>
    internal static Markup Dated(Workbench bench) => Html.Of($"""<p class="dated">As of {DateWords.Of(bench.Now)}, {bench.Now.ToString("HH:mm", CultureInfo.InvariantCulture)}</p>""");

    /// <summary>The links of a page that is served.</summary>
    internal static Markup Served { get; } = Html.Own("""<a href="/">All jars</a><a href="/mix">Mix a jar</a><a href="/scan">Scan</a><a href="/steps">All steps</a>""");

    /// <summary>The links of a page that is kept as a file.</summary>
    /// <param name="all">The way to the list of jars.</param>
    internal static Markup Still(string all) => Html.Of($"""<a href="{all}">All jars</a>""");

    /// <summary>What a page without a server must say of itself: it loads nothing and runs nothing.</summary>
    internal static Markup StillHead { get; } = Html.Of(
        $"""
        <meta name="generator" content="JarLabel">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src {PageAssets.StyleHash}; img-src data:; base-uri 'none'; form-action 'none'">
        <meta name="referrer" content="no-referrer">

        """);
}
