namespace JarLabel.Operations.Scanning;

/// <summary>What stands behind some codes: jars, bags, bottles, and what could not be read.</summary>
internal sealed class ScannedCodes
{
    private readonly List<Scanned> jars = [];
    private readonly List<SupplyOutcome> supplies = [];
    private readonly List<Problem> faults = [];

    internal ScannedCodes(Workbench bench, IReadOnlyList<string> codes)
    {
        foreach (var code in codes)
        {
            Find(bench, code);
        }
    }

    internal IReadOnlyList<Scanned> Jars => jars;

    /// <summary>Bags and bottles.</summary>
    internal IReadOnlyList<SupplyOutcome> Supplies => supplies;

    internal IReadOnlyList<Problem> Faults => faults;

    internal bool Nothing => jars.Count + supplies.Count == 0;

    /// <summary><c>2 jars, 1 bag</c>.</summary>
    internal string Title => CountWords.Several((jars.Count, "jar"), (Of(SupplyKind.Bag), "bag"), (Of(SupplyKind.Bottle), "bottle"));

    private void Find(Workbench bench, string code)
    {
        if (SupplyCode.Read(code) is { } supply)
        {
            Keep(ScanSupply.Find(bench, code, supply), supplies);
        }
        else
        {
            Keep(ScanJar.Find(bench, code), jars);
        }
    }

    private int Of(SupplyKind kind) => supplies.Count(one => one.Supply.Kind == kind);

    private void Keep<T>(Result<T> found, List<T> to)
        where T : notnull
    {
        faults.AddRange(found.Problems);
        if (found.TryGet(out var one, out _))
        {
            to.Add(one);
        }
    }
}
