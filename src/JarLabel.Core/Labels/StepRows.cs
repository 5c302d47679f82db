namespace JarLabel.Core.Labels;

/// <summary>What the hands do, or did, in a step.</summary>
public static class StepRows
{
    /// <summary>What to add, or what was done.</summary>
    public static IEnumerable<(string Name, string? Value)> Of(JarEvent step, ShopCatalog catalog, bool metric)
    {
        return step switch
        {
            Thinned { Added: var a } => [("add", $"{BenchAmount.Both(a.Poured, metric)} of {catalog.SolventOf(a.Solvent).ShortName}, or weigh {BenchAmount.Both(a.Weight, metric)}")],
            Thickened { Added: var a } => [("add", $"{BenchAmount.Both(a.Weight, metric)} of {catalog.GradeOf(a.Grade).Name} flakes")],
            _ => [("done", HistoryWords.Of(step))],
        };
    }
}
