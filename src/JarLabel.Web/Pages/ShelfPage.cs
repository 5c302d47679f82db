using System.Globalization;
using JarLabel.Bench;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Core.Labels;
using JarLabel.Store.Index;

namespace JarLabel.Web.Pages;

/// <summary>All jars, soonest use-by first, a page at a time.</summary>
internal static class ShelfPage
{
    internal static string Of(Workbench bench, ShelfList list) => Frame.Page(
        bench.Settings.Name ?? "All jars",
        Html.Of(
            $"""
            <h1>{bench.Settings.Name ?? "All jars"}</h1>
            {Find()}
            {ProblemPage.Cautions(list.Cautions)}
            {Filter(bench, list.Query)}
            {(list.Jars.Count == 0 ? Html.Own("<p>No jar here.</p>") : Jars(bench, list.Jars, j => $"/J/{JarNumber.From(j.Number)}"))}
            {Next(list)}
            {Totals(bench, list.Totals)}
            """),
        Frame.Served);

    /// <summary>The list of a copy that needs no server.</summary>
    internal static string Still(Workbench bench, IReadOnlyList<JarEntry> jars) => Frame.Page(
        bench.Settings.Name ?? "All jars",
        Html.Of(
            $"""
            <h1>{bench.Settings.Name ?? "All jars"}</h1>
            {JarParts.Kept(bench)}
            {(jars.Count == 0 ? Html.Own("<p>No jar here.</p>") : Jars(bench, jars, j => $"J/{JarNumber.From(j.Number)}/index.html"))}
            """),
        Frame.Still("index.html"),
        head: Frame.StillHead);

    /// <summary>The jars as one list of links.</summary>
    private static Markup Jars(Workbench bench, IEnumerable<JarEntry> jars, Func<JarEntry, string> address) =>
        Html.Of($"""<ul class="jars">{jars.Select(j => One(bench, j, address(j)))}</ul>""");

    private static Markup One(Workbench bench, JarEntry jar, string address)
    {
        var test = jar.Tested is { } day ? new TestResult(day, jar.TestPassed == true) : null;
        var state = new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy).StateAt(bench.Now, test);
        return Html.Of(
            $"""
            <li><a href="{address}"><b>{VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0)}</b>
            <span class="name">{bench.Catalog.Grades.Find(jar.Grade)?.Name ?? jar.Grade}, jar {JarNumber.From(jar.Number).ToString()}</span>
            <span class="how"><span{Html.Own(state == JarState.Past ? " class=\"past\"" : "")}>{StateShape.Of(state)}{StateShape.Word(state)}</span> <span>use by {DateWords.Estimate(jar.UseBy)}</span> <span>{BenchAmount.Both(jar.Liquid, bench.Metric)}</span></span></a></li>
            """);
    }

    private static Markup Find() => Html.Own(
        """
        <form action="/" method="get" role="search"><label for="find">Jar number or code</label>
        <div class="row"><input id="find" name="find" autocomplete="off" enterkeyhint="go"><button>Find</button></div></form>
        """);

    private static Markup Filter(Workbench bench, ShelfQuery query) => Html.Of(
        $"""
        <form action="/" method="get"><div class="row"><div><label for="shelf">Shelf</label>
        <select id="shelf" name="shelf"><option value="">all</option>{bench.Settings.Shelves.Select(s => Option(s.Name, query.Shelf))}</select></div>
        <label class="pick"><input type="checkbox" name="due" value="1"{Html.Own(query.Due is null ? "" : " checked")}>only to test or past</label>
        <button>Show</button></div></form>
        """);

    private static Markup Option(string name, string? chosen) => Html.Of(
        $"""<option{Html.Own(name == chosen ? " selected" : "")}>{name}</option>""");

    private static Markup Next(ShelfList list) => Html.If(list.More, () => Html.Of(
        $"""
        <p class="do"><a class="go" href="/?after={Mark(list.Jars[^1])}{Html.Of($"&amp;shelf={Uri.EscapeDataString(list.Query.Shelf ?? "")}")}{(list.Query.Due is null ? "" : "&due=1")}">Later use-by dates</a></p>
        """));

    private static string Mark(JarEntry last) => string.Create(CultureInfo.InvariantCulture, $"{last.UseBy:yyyy-MM-dd}.{last.Number}");

    private static Markup Totals(Workbench bench, IReadOnlyList<ShelfTotal> totals) => Html.If(totals.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="totals"><h2 id="totals">On the shelves</h2>
        {JarParts.Rows([.. totals.Select(t => ($"shelf {t.Shelf}", (string?)$"{t.Jars.ToString(CultureInfo.InvariantCulture)} jar{(t.Jars == 1 ? "" : "s")}, {BenchAmount.Both(t.Liquid, bench.Metric)}"))])}</section>
        """));
}
