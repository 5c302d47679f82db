using JarLabel.Core.Jars;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Answers;

/// <summary>What the hands do, or did, in a step.</summary>
internal static class StepRows
{
    internal static IEnumerable<(string Name, string? Value)> Of(JarEvent step, Session session)
    {
        var catalog = session.Workbench.Catalog;
        var metric = session.Workbench.Metric;
        return step switch
        {
            Thinned { Added: var a } => [("add", $"{BenchAmount.Both(a.Poured, metric)} of {catalog.Solvents.Find(a.Solvent)!.ShortName}, or weigh {BenchAmount.Both(a.Weight, metric)}")],
            Thickened { Added: var a } => [("add", $"{BenchAmount.Both(a.Weight, metric)} of {catalog.Grades.Find(a.Grade)!.Name} flakes")],
            _ => [("done", HistoryWords.Of(step))],
        };
    }
}
