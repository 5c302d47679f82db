namespace JarLabel.Web.Pages;

/// <summary>The shop's own cans of alcohol, and a form to enter one more from its data sheet.</summary>
internal static class CanPage
{
    internal static string Of(Workbench bench, string token, IReadOnlyList<CanOutcome> cans, FormValues entry, IReadOnlyList<Problem> problems)
    {
        var (head, rows) = (CanEntry.Head(entry), CanEntry.Contents(bench, entry));
        return Frame.Page(
            "Cans of this shop",
            Html.Of(
                $"""
                <h1>Cans of this shop</h1>
                {FormPage.Summary(problems, [.. head, .. rows.SelectMany(row => (FormField[])[row.Of, row.Share])])}
                {cans.Select(can => One(bench, can))}
                <h2>Enter a can</h2>
                <p>Section 3 of its safety data sheet names what is in it. Where it gives a range, write the range: every question is then answered for the worst that it allows.</p>
                <form method="post" action="/can" autocomplete="off">
                {FormPage.Hidden("token", token)}
                {head.Select(field => Html.Of($"""<div class="fields{(field.Choices is null ? "" : " picks")}">{FormPage.One(problems, field, entry)}</div>"""))}
                {rows.Select(row => Html.Of($"""<div class="row">{FormPage.One(problems, row.Of, entry)}{FormPage.One(problems, row.Share, entry)}</div>"""))}
                <button>Enter the can</button>
                </form>
                """),
            Frame.Served);
    }

    private static Markup One(Workbench bench, CanOutcome can) =>
        Html.Of($"""<h2>{Capital.Of(can.Solvent.Name)}</h2>{JarParts.Rows([.. CanWords.Rows(bench, can)])}{ProblemPage.Cautions(can.Cautions)}""");
}
