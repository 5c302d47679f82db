using JarLabel.Core.Catalog;

namespace JarLabel.Web.Pages;

/// <summary>The shop's own cans of alcohol, and a form to enter one more from its data sheet.</summary>
internal static class CanPage
{
    internal static string Of(Workbench bench, string token, IReadOnlyList<CanOutcome> cans, FormValues entry, IReadOnlyList<Problem> problems) => Frame.Page(
        "Cans of this shop",
        Html.Of(
            $"""
            <h1>Cans of this shop</h1>
            {Html.If(problems.Count > 0, () => Html.Of($"""<div class="warn" role="alert">{ProblemPage.Nothing}{ProblemPage.Lines(problems)}</div>"""))}
            {cans.Select(can => One(bench, can))}
            <h2>Enter a can</h2>
            <p>Section 3 of its safety data sheet names what is in it. Where it gives a range, write the range: every question is then answered for the worst that it allows.</p>
            <form method="post" action="/can" autocomplete="off">
            {FormPage.Hidden("token", token)}
            <div class="fields">{Text(entry, "name", "What it is called here", "the green can")}</div>
            <div class="fields picks">{Choice(entry, "by-volume", "The percentages are", [("", "by weight, as on most sheets"), ("yes", "by volume")])}</div>
            {Enumerable.Range(1, CanEntry.Rows).Select(row => Row(bench, entry, row))}
            <button>Enter the can</button>
            </form>
            """),
        Frame.Served);

    private static Markup One(Workbench bench, CanOutcome can) =>
        Html.Of($"""<h2>{Capital.Of(can.Solvent.Name)}</h2>{JarParts.Rows([.. CanWords.Rows(bench, can)])}{ProblemPage.Cautions(can.Cautions)}""");

    private static Markup Row(Workbench bench, FormValues entry, int row) => Html.Of(
        $"""
        <div class="row"><div>{Choice(entry, CanEntry.Substance(row), $"Substance {row}", [("", "none"), .. Substances(bench)])}</div><div>{Text(entry, CanEntry.Percent(row), $"Its percent {row}", row == 1 ? "30-60, 5, <3, >=50, rest" : null)}</div></div>
        """);

    private static IEnumerable<(string Value, string Words)> Substances(Workbench bench) =>
        bench.Catalog.Substances.Rows.Where(s => s.Id != Substance.ResinId).Select(s => (s.Id, s.Name));

    private static Markup Text(FormValues entry, string where, string label, string? hint) => Html.Of(
        $"""
        <div><label for="f-{where}">{label}</label><input id="f-{where}" name="{where}" aria-describedby="h-{where}" value="{entry.Text(where) ?? ""}" autocapitalize="off" spellcheck="false"><span class="hint" id="h-{where}">{hint}</span></div>
        """);

    private static Markup Choice(FormValues entry, string where, string label, IReadOnlyList<(string Value, string Words)> choices) => Html.Of(
        $"""
        <div><label for="f-{where}">{label}</label><select id="f-{where}" name="{where}">{choices.Select(choice => Html.Of($"""<option value="{choice.Value}"{Html.Own(choice.Value == (entry.Text(where) ?? "") ? " selected" : "")}>{choice.Words}</option>"""))}</select></div>
        """);
}
