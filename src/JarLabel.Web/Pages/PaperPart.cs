using JarLabel.Bench.Printing;
using JarLabel.Printing.Printers;
using JarLabel.Web.Printing;

namespace JarLabel.Web.Pages;

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
        {outcome.Problems.Select(ProblemPage.Line)}
        {ProblemPage.Cautions(outcome.Cautions)}
        """);
}
