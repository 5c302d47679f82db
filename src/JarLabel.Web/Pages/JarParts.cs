namespace JarLabel.Web.Pages;

/// <summary>The parts of a jar's page.</summary>
internal static class JarParts
{
    internal static Markup Headline(Workbench bench, JarHistory history)
    {
        var jar = history.Jar;
        var state = jar.StateAt(bench.Now);
        var title = JarTitle.Of(jar, bench.Catalog).Split(", ", 2);
        return Html.Of(
            $"""
            <h1>{Cut(jar)}{title[1]}<br><small>Jar {jar.Number} · rev {jar.Revision} · shelf {jar.Shelf}</small></h1>
            <p class="state{(state is JarState.Past or JarState.Discarded or JarState.TakenBack ? " past" : "")}">{StateShape.Of(state)} {(jar.OnShelf ? JarStateWords.Of(state) : jar.Gone)}</p>
            {(jar.OnShelf ? Html.Of($"""<p class="by">{(jar.FailedOn is { } failed ? FailureWords.On(failed) : jar.DoubtedSince is { } since ? $"in doubt since {DateWords.Of(since)}" : $"use by {DateWords.Estimate(jar.Careful.UseBy)}")}</p><p>holds {Holds(bench, jar)}</p>""") : default)}
            """);
    }

    /// <summary>The steps that it asks for as it stands, which come first on its page.</summary>
    internal static IReadOnlyCollection<string> Asked(Workbench bench, Jar jar) =>
        [.. StepForms.OfJar.Values.Where(form => (jar.OnShelf || form.Step.TakesGone) && form.Step.IsAskedFor(jar, bench.Now)).Select(form => form.Step.Verb)];

    /// <summary>What can be done with it: first what its state asks for, and folded away what is final or seldom wanted. Where even its beginning was taken back, nothing.</summary>
    internal static Markup Buttons(Workbench bench, JarHistory history)
    {
        var jar = history.Jar;
        if (jar.TakenBack is not null)
        {
            return default;
        }

        var open = StepForms.OfJar.Values.Where(form => jar.OnShelf || form.Step.TakesGone).OrderByDescending(Asks).ToLookup(form => jar.OnShelf && form.Step.IsSeldom && !Asks(form));
        return Html.Of(
            $"""
            <nav class="do" aria-label="This jar">{Html.All(open[false].Select(form => Step(jar, form, Asks(form))))}{Html.If(jar.OnShelf && history.Label?.Revision == jar.Revision && LabelIsHere(bench, history), () => Html.Of($"""<a class="go" href="/J/{jar.Number}/label.pdf">Label as PDF</a>"""))}</nav>
            {Html.If(open[true].Any(), () => Html.Of($"""<details class="more"><summary>More</summary><nav class="do" aria-label="More of this jar">{Html.All(open[true].Select(form => Step(jar, form)))}</nav></details>"""))}
            """);

        bool Asks(StepForm form) => form.Step.IsAskedFor(jar, bench.Now);
    }

    /// <summary>True where the file of its newest label lies in the shop's own folder, from which it is handed out.</summary>
    private static bool LabelIsHere(Workbench bench, JarHistory history) => bench.Folder.Full(history.Label!.File) is var file && bench.Folder.HasAmongLabels(file) && File.Exists(file);

    internal static Markup Kept(Workbench bench) =>
        Html.Of($"""<p class="told">A copy as of {DateWords.Of(bench.Now)}. State and contents are of that moment; what happened later is in the shop's ledger.</p>""");

    internal static Markup Recipe(Workbench bench, Jar jar)
    {
        if (jar.Contents.Recipe is not { } recipe)
        {
            return default;
        }

        return Html.Of(
            $"""
            <section aria-labelledby="recipe"><h2 id="recipe">What is in it</h2>
            {Rows(
                ("alcohol", $"{BenchAmount.Both(recipe.Pour, bench.Metric)}, or weigh {BenchAmount.Both(recipe.PourWeight, bench.Metric)}"),
                ("flakes", BenchAmount.Both(recipe.Flakes, bench.Metric)),
                ("makes", BenchAmount.Both(recipe.Makes, bench.Metric)),
                ("cut", $"{CutWords.Of(recipe.Cut)}, {CutWords.Metric(recipe.Cut)}"),
                ("job", jar.Job),
                ("by", jar.By),
                ("note", jar.Note))}
            </section>
            """);
    }

    internal static Markup Thinning(LabelText? text)
    {
        var table = text?.Tables["thinning"] ?? [];
        return Html.If(table.Count > 0, () => Html.Of(
            $"""
            <section aria-labelledby="thinning"><h2 id="thinning">To thin it</h2>
            <table><caption>Alcohol to add</caption>{Head(table[0])}<tbody>{table.Skip(1).Select(Row)}</tbody></table></section>
            """));
    }

    /// <summary>The dates and what the use-by stands on.</summary>
    internal static Markup Dates(Jar jar, LabelText? text) => Html.If(text is not null, () => Html.Of(
        $"""
        <section aria-labelledby="dates"><h2 id="dates">Dates</h2>
        {Rows([
            .. text!.Tables["dates"].Select(r => (r[0], (string?)r[1])),
            ("stands on", jar is { FailedOn: null, DoubtedSince: null } ? KeepingWords.Basis(jar.Dates) : null),
            (jar.Doubts.Shortened ? "by its flakes now" : "by tests now", jar.Learned is { } now ? $"{DateWords.Estimate(now.UseBy)}; a label printed before is out of date" : null),
        ])}</section>
        """));

    /// <summary>What went out of it, and to which job.</summary>
    internal static Markup Jobs(Workbench bench, JarHistory history)
    {
        Used[] used = [.. history.Life.Standing.OfType<Used>().Reverse()];
        return Html.If(used.Length > 0, () => Html.Of(
            $"""
            <section aria-labelledby="jobs"><h2 id="jobs">Jobs</h2>
            <table>{Head(["day", "taken", "for"])}<tbody>{used.Select(u => Row([Day(u), BenchAmount.Both(u.Taken.Liquid, bench.Metric), u.Job ?? ""]))}</tbody></table></section>
            """));
    }

    internal static Markup History(JarHistory history) => Html.Of(
        $"""
        <section aria-labelledby="history"><h2 id="history">What happened</h2>
        {Rows([.. HistoryWords.All([.. history.Events.Select(e => e.Event)]).Select(row => (row.Day, (string?)row.What))])}</section>
        """);

    internal static Markup List(IEnumerable<string> sentences) => sentences.ToArray() is { Length: > 0 } some
        ? Html.Of($"<ul>{some.Select(s => Html.Of($"<li>{s}</li>"))}</ul>")
        : default;

    /// <summary>Name and value; what has no value is left out.</summary>
    internal static Markup Rows(params IEnumerable<(string Name, string? Value)> rows) =>
        Html.Of($"<dl>{rows.Where(r => r.Value is not null).Select(r => Html.Of($"<dt>{r.Name}</dt><dd>{r.Value}</dd>"))}</dl>");

    internal static string Holds(Workbench bench, Jar jar) => jar.Contents.Cut is null ? "nothing more" : BenchAmount.Both(jar.Contents.Liquid, bench.Metric);

    private static Markup Cut(Jar jar) => jar.Contents.Cut is { } cut
        ? Html.Of($"""<span class="cut">{VulgarFraction.Of(cut.PoundsPerUsGallon)}<span>lb cut</span></span> """)
        : Html.Own("""<span class="cut">empty</span> """);

    private static Markup Step(Jar jar, StepForm form, bool first = false) => Html.Of($"""<a class="go{Html.Own(first ? " first" : "")}" href="/J/{jar.Number}/{form.Name}">{form.Step.Title}</a>""");

    private static Markup Head(IReadOnlyList<string> cells) => Html.Of($"<thead><tr>{cells.Select(c => Html.Of($"""<th scope="col">{c}</th>"""))}</tr></thead>");

    private static Markup Row(IReadOnlyList<string> cells) =>
        Html.Of($"""<tr><th scope="row">{cells[0]}</th>{cells.Skip(1).Select(c => Html.Of($"<td>{c}</td>"))}</tr>""");

    private static string Day(JarEvent happened) => DateWords.Of(DateOnly.FromDateTime(happened.At));
}
