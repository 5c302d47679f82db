namespace JarLabel.Web.Pages;

/// <summary>What keeps the shop, beneath its settings: a copy of all of it to take away, whether it is whole, and the devices that may record.</summary>
internal static class KeepPart
{
    internal static Markup Of(Workbench bench) => Html.Of(
        $"""
        <section aria-labelledby="keep"><h2 id="keep">Keep the shop</h2>
        {(File.Exists(bench.Folder.Ledger) ? Copies : Html.Own("<p>The first jar, bag or bottle begins what can be backed up.</p>"))}
        <p class="do">{Html.If(File.Exists(bench.Folder.Ledger), () => Html.Own("""<a class="go" href="/export">All events as text</a>"""))}<a class="go" href="/verify">Check the shop</a><a class="go" href="/check">Check the shop's files</a><a class="go" href="/devices">Devices</a></p>
        <p>A telephone keeps the jars it looked at last for when there is no network, where these pages come encrypted: the shop's computer can be told so when it starts serving them. Over plain HTTP no browser does.</p></section>
        """);

    private static Markup Copies => Html.Own(
        """
        <p>A backup is one file with the whole shop. Keep it on another machine than the shop's computer. It is brought back at the shop's computer itself, not from here.</p>
        <p class="do"><a class="go first" href="/backup">Back up</a></p>
        """);
}
