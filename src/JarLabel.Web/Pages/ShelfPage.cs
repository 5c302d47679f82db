using JarLabel.Core.Hazards;

namespace JarLabel.Web.Pages;

/// <summary>All jars, soonest use-by first, a page at a time.</summary>
internal static class ShelfPage
{
    /// <summary>The list that is served.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="sight">What stands there.</param>
    /// <param name="reached">The address by which these pages were reached, where codes may lead to them; else null.</param>
    internal static string Of(Workbench bench, ShelfView sight, string? reached) => Frame.Page(
        bench.Settings.Name ?? "All jars",
        Html.Of(
            $"""
            <h1>{bench.Settings.Name ?? "All jars"}</h1>
            {Frame.Dated(bench)}{Scan(sight)}{Find(sight.Find)}{CodesLead(bench, reached)}
            {(sight.Find is { } words ? Html.Of($"""<p role="status">{(sight.List.Jars.Count == 0 ? "No jar" : CountWords.Of(sight.List.Jars.Count, "jar"))} with “{words}”</p>""") : ProblemPage.Cautions(sight.Cautions))}
            {Html.If(sight.Find is null, () => Filter(bench, sight))}
            {(sight.List.Jars.Count == 0 ? None(bench, sight) : Jars(bench, sight.List, j => $"/J/{JarNumber.From(j.Number)}"))}
            {Next(sight)}
            {ProblemPage.Cautions(sight.OfJars)}
            {StockParts.Totals(bench, sight.Totals)}{StockParts.Bottles(bench, sight.Bottles)}{StockParts.Bags(bench, sight.Bags)}
            <nav class="top" aria-label="More of the shop"><a href="/can">Cans of this shop, from their data sheets</a><a href="/shop/show">Settings, backup, devices</a></nav>
            """),
        Frame.Served,
        script: true);

    /// <summary>The list of a copy that needs no server.</summary>
    internal static string Still(Workbench bench, ShelfList list) => Frame.Page(
        bench.Settings.Name ?? "All jars",
        Html.Of(
            $"""
            <h1>{bench.Settings.Name ?? "All jars"}</h1>
            {JarParts.Kept(bench)}
            {(list.Jars.Count == 0 ? Html.Own("<p>No jar here.</p>") : Jars(bench, list, j => $"J/{JarNumber.From(j.Number)}/index.html"))}
            """),
        Frame.Still("index.html"),
        head: Frame.StillHead);

    private static Markup None(Workbench bench, ShelfView sight) => sight.Shelf is not null || sight.Due || sight.Find is not null
        ? Html.Own("""<p>No such jar stands here.</p><p class="do"><a class="go" href="/">All jars</a></p>""")
        : File.Exists(bench.Folder.Settings) || File.Exists(bench.Folder.Ledger)
        ? Html.Own(
            """
            <p>No jar stands here yet.</p><p class="do"><a class="go first" href="/mix">Mix a jar</a><a class="go" href="/bag/add">A bag of flakes</a><a class="go" href="/bottle/add">A bottle of alcohol</a><a class="go" href="/shop/setup">Settings</a></p>
            """)
        : Html.Own(
            """
            <p>No jar stands here yet.</p>
            <h2>Set up your shop</h2><p>Its name, whose rules hold, what you print on, how warm the shelves are: settled once, and printed on every label. All of it can be left for later.</p>
            <p class="do"><a class="go first" href="/shop/setup">Set up your shop</a><a class="go" href="/bag/add">A bag of flakes</a><a class="go" href="/bottle/add">A bottle of alcohol</a><a class="go" href="/mix">Mix a jar</a></p>
            """);

    /// <summary>The jars as one list of links.</summary>
    private static Markup Jars(Workbench bench, ShelfList list, Func<JarEntry, string> address)
    {
        return Html.Of($"""<ul class="jars">{list.Jars.Select(j => One(bench, j, list, address(j)))}</ul>""");
    }

    private static Markup One(Workbench bench, JarEntry jar, ShelfList list, string address)
    {
        var state = list.StateOf(jar, bench.Now);
        var useBy = jar.FailedOn is { } failed ? FailureWords.On(failed)
            : $"{(list.Doubts(jar).Any ? "" : "use by ")}{list.UseBy(jar, DateWords.Estimate)}";
        return Html.Of(
            $"""
            <li><a href="{address}"><b>{VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0)}</b>
            <span class="name">{string.Join(" + ", jar.Grades.Select(grade => bench.Catalog.Grades.Find(grade)?.Name ?? grade))}, jar {JarNumber.From(jar.Number).ToString()}</span>
            <span class="how"><span{Html.Own(state == JarState.Past ? " class=\"past\"" : "")}>{StateShape.Of(state)}{JarStateWords.Of(state)}</span> <span>{useBy}</span> <span>{BenchAmount.Both(jar.Liquid, bench.Metric)}</span>{Html.If(list.Poisons.Contains(jar.Number), () => Html.Of($" <span class=\"past\">{PoisonWords.Words[0]}</span>"))}</span></a></li>
            """);
    }

    private static Markup Scan(ShelfView sight) => Html.If(sight.Totals.Count + sight.Bottles.Count + sight.Bags.Count > 0, () => Html.Own("""<p class="do"><a class="go first" href="/scan">Scan a label</a></p>"""));

    /// <summary>Says where the codes of labels lead when that is not here, with the way to let them.</summary>
    private static Markup CodesLead(Workbench bench, string? reached) => Html.If(reached is not null && !LabelAddress.Leads(bench.Settings.BaseUrl?.Text, reached), () => Html.Of(
        $"""<p class="lead">{(bench.Settings.BaseUrl is { } other ? $"The codes on labels open {other.Text}, not these pages." : "The codes on labels do not open these pages yet.")} {StepLinks.Named(new Remedy("shop set", new("setting", "base-url"), new("value", reached!)), "Let those printed from now on open their jar here")}</p>"""));

    private static Markup Find(string? words) => Html.Of(
        $"""
        <form action="/" method="get" role="search"><label for="find">Jar number, code, flakes or job</label>
        <div class="row find"><input id="find" name="find" value="{words ?? ""}" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="go"><button>Find</button></div></form>
        """);

    private static Markup Filter(Workbench bench, ShelfView sight) => Html.Of(
        $"""
        <details{Html.Own(sight.Shelf is null && !sight.Due ? "" : " open")}><summary>Only some jars</summary>
        <form action="/" method="get"><div class="row"><div><label for="shelf">Shelf</label>
        <select id="shelf" name="shelf"><option value="">all</option>{bench.Settings.Shelves.Select(s => Option(s.Name, sight.Shelf))}</select></div>
        <label class="pick"><input type="checkbox" name="due" value="1"{Html.Own(sight.Due ? " checked" : "")}>only to test or past</label>
        <button>Show</button></div></form></details>
        """);

    private static Markup Option(string name, string? chosen) => Html.Of(
        $"""<option{Html.Own(name == chosen ? " selected" : "")}>{name}</option>""");

    private static Markup Next(ShelfView sight) => Html.If(sight.More, () => Html.Of(
        $"""
        <p class="do"><a class="go" href="/?after={Mark(sight.After)}{Html.Of($"&amp;shelf={Uri.EscapeDataString(sight.Shelf ?? "")}")}{(sight.Due ? "&due=1" : "")}">Later use-by dates</a></p>
        """));

    private static string Mark(ShelfMark last) => string.Create(CultureInfo.InvariantCulture, $"{last.UseBy:yyyy-MM-dd}.{last.Number}");
}

/// <summary>A jar's state as a shape beside its word: filled is good, half is to be tested, hollow is past, dotted is not yet dissolved.</summary>
internal static class StateShape
{
    internal static Markup Of(JarState state) => Html.Own($"""<svg viewBox="0 0 20 20" aria-hidden="true">{Inside(state)}</svg>""");

    private static string Inside(JarState state) => state switch
    {
        JarState.Dissolving => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="3" stroke-dasharray="3 3.3"/>""",
        JarState.Good => """<circle cx="10" cy="10" r="9" fill="currentColor"/>""",
        JarState.Test => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="2.5"/><path d="M10 2a8 8 0 0 1 0 16z" fill="currentColor"/>""",
        JarState.Past => """<circle cx="10" cy="10" r="8" fill="none" stroke="currentColor" stroke-width="2.5"/>""",
        _ => """<path d="M3 3l14 14M17 3L3 17" fill="none" stroke="currentColor" stroke-width="3"/>""",
    };
}
