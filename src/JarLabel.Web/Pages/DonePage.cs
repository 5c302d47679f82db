namespace JarLabel.Web.Pages;

/// <summary>What was recorded, how its label stands at the printer, and what comes next.</summary>
/// <param name="Bench">The shop.</param>
/// <param name="Outcome">What was recorded.</param>
/// <param name="Run">Its label on the way to paper; null where no printer was chosen.</param>
internal sealed record DonePage(Workbench Bench, Outcome Outcome, PaperRun? Run)
{
    /// <summary>The page, as it is now.</summary>
    internal string Html()
    {
        var said = Bench.DryRun ? "Worked out, not recorded" : Outcome.IsNothing ? "Nothing to record" : "Recorded";
        return Frame.Page(
            said,
            Pages.Html.Of(
                $"""
                {Head(said)}{Frame.Dated(Bench)}<div data-done></div>
                {Pages.Html.If(Run is not null, () => Pages.Html.Of($"""<section id="paper" aria-live="polite" aria-label="Printer">{Paper()}</section>"""))}
                {Swirl()}
                <div class="live">{StepResult.Of(Bench, Outcome)}</div>
                <p class="do">{Links()}</p>
                """),
            Frame.Served,
            script: true);
    }

    /// <summary>How its label stands at the printer.</summary>
    internal Markup Paper() => Run is null ? default : PaperPart.Of(Run);

    private Markup Head(string said) => Outcome.Jar?.History.Jar is { } jar
        ? Pages.Html.Of(
            $"""
            <h1>{said}<br><small>Jar {jar.Number} · rev {jar.Revision}</small></h1>
            <p>{JarTitle.Of(jar, Bench.Catalog)}</p>
            """)
        : Pages.Html.Of($"<h1>{said}</h1>");

    private Markup Swirl() => Outcome.Jar is { Step: Mixed or Thickened } done && !Bench.DryRun ? SwirlPart.Of(Bench, done.History) : default;

    private Markup Links() => Outcome.Jar is not { } done
        ? Pages.Html.Of($"""{Pages.Html.If(!Bench.DryRun, () => Pages.Html.All(Outcome.Files.Select(File)))}{StepLinks.Of([.. Next, .. Outcome.Ways], null, "/")}<a class="go" href="/">All jars</a><a class="go" href="/steps">All steps</a>""")
        : Pages.Html.Of(
        $"""
        {Pages.Html.If(done.Label is { Event.IsOnGlass: true } && !Bench.DryRun, () => Pages.Html.Of($"""<a class="go first" href="/J/{done.History.Jar.Number}/label.pdf">Label as PDF</a>"""))}{Pages.Html.If(done.Label is { Event.IsOnGlass: false } && !Bench.DryRun, () => Pages.Html.All(Outcome.Files.Select(File)))}{done.Made.Select(Made)}{Jar(done.History.Jar.Number.ToString())}{StepLinks.Of(Next, done.History.Jar.Number, $"/J/{done.History.Jar.Number}")}
        """);

    private IEnumerable<Remedy> Next => BlockParts.Next(Outcome.Answer.Screen);

    /// <summary>The way to a file in the shop's folder of labels; none to one elsewhere.</summary>
    private Markup File(string file) => Pages.Html.If(Path.GetDirectoryName(file) == Bench.Folder.Labels, () =>
        Pages.Html.Of($"""<a class="go first" href="/labels/{Uri.EscapeDataString(Path.GetFileName(file))}">Print the file</a>"""));

    private Markup Made(JarOutcome made) => Pages.Html.Of(
        $"""{Pages.Html.If(made.Label is not null && !Bench.DryRun, () => Pages.Html.Of($"""<a class="go" href="/J/{made.History.Jar.Number}/label.pdf">Label of jar {made.History.Jar.Number}</a>"""))}{Jar(made.History.Jar.Number.ToString())}""");

    private static Markup Jar(string jar) => Pages.Html.Of($"""<a class="go" href="/J/{jar}">Jar {jar}</a>""");
}

/// <summary>How a label stands at its printer. While it goes the script asks for this part again; without script a link does.</summary>
internal static class PaperPart
{
    internal static Markup Of(PaperRun run) => run.Outcome is { } outcome ? Ended(run, outcome) : Html.Of(
        $"""
        <p class="told" data-going>{run.Printer}: {(run.Last is { } job ? PrintWords.Of(job) : "the label is on its way")}.</p>
        <p><a href="">How it stands now</a></p>
        """);

    private static Markup Ended(PaperRun run, PrintOutcome outcome) => Html.Of(
        $"""
        <p class="{(outcome.End is PrintEnd.Failed or PrintEnd.Unknown ? "warn" : "told")}">{run.Printer}: {PrintWords.Of(outcome)}{(outcome.End == PrintEnd.Failed ? "; everything else is recorded" : "")}.</p>
        {ProblemPage.Lines(outcome.Problems)}
        {ProblemPage.Cautions(outcome.Cautions)}
        """);
}
