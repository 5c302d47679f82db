namespace JarLabel.Operations.Scanning;

/// <summary>What stands behind some codes: jars, bags, bottles, and what could not be read.</summary>
internal sealed class ScannedCodes
{
    private readonly List<Scanned> jars = [];
    private readonly List<BagOutcome> bags = [];
    private readonly List<BottleOutcome> bottles = [];
    private readonly List<Problem> faults = [];

    internal ScannedCodes(Workbench bench, IReadOnlyList<string> codes)
    {
        foreach (var code in codes)
        {
            Find(bench, code);
        }
    }

    internal IReadOnlyList<Scanned> Jars => jars;

    internal IReadOnlyList<BagOutcome> Bags => bags;

    internal IReadOnlyList<BottleOutcome> Bottles => bottles;

    internal IReadOnlyList<Problem> Faults => faults;

    internal bool Nothing => jars.Count + bags.Count + bottles.Count == 0;

    /// <summary><c>2 jars, 1 bag</c>.</summary>
    internal string Title => CountWords.Several((jars.Count, "jar"), (bags.Count, "bag"), (bottles.Count, "bottle"));

    private void Find(Workbench bench, string code)
    {
        switch (SupplyCode.Read(code))
        {
            case { Kind: SupplyKind.Bag } bag:
                Keep(ScanSupply.Bag(bench, code, bag), bags);
                break;
            case { } bottle:
                Keep(ScanSupply.Bottle(bench, code, bottle), bottles);
                break;
            default:
                Keep(ScanJar.Find(bench, code), jars);
                break;
        }
    }

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
