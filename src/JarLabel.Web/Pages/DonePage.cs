using JarLabel.Bench;
using JarLabel.Core.Labels;

namespace JarLabel.Web.Pages;

/// <summary>What was recorded, and what comes next.</summary>
internal static class DonePage
{
    internal static string Of(Workbench bench, BenchOutcome outcome)
    {
        var jar = outcome.History.Jar;
        return Frame.Page(
            bench.DryRun ? "Worked out" : "Recorded",
            Html.Of(
                $"""
                <h1>{(bench.DryRun ? "Worked out, not recorded" : "Recorded")}<br><small>Jar {jar.Number} · rev {jar.Revision}</small></h1>
                <p>{JarTitle.Of(jar, bench.Catalog)}</p>
                <div class="live">{StepResult.Of(bench, outcome)}</div>
                <p class="do">{Html.If(outcome.Label is not null && !bench.DryRun, () => Html.Of($"""<a class="go" href="/J/{jar.Number}/label.pdf">Label as PDF</a>"""))}<a class="go" href="/J/{jar.Number}">Jar {jar.Number}</a></p>
                """),
            Frame.Served);
    }
}
