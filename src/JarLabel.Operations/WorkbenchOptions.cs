namespace JarLabel.Operations;

/// <summary>How somebody comes to the bench.</summary>
/// <param name="Shop">The shop folder as typed; null for the usual one.</param>
/// <param name="Now">The moment that counts as now, local time.</param>
/// <param name="Rules">The labelling rules asked for; null for the shop's.</param>
/// <param name="Metric">Metric amounts first; null for the shop's choice.</param>
/// <param name="DryRun">Compute and show, record and write nothing.</param>
/// <param name="StepsSeen">How many steps of its jar the person has seen; when there are more by now, the step is refused. Null where that does not matter.</param>
public sealed record WorkbenchOptions(string? Shop, DateTime Now, RuleSet? Rules = null, bool? Metric = null, bool DryRun = false, int? StepsSeen = null)
{
    /// <summary>How many events of the whole ledger the person has seen, where it is not known yet which jar, bag or bottle the step is of; when there are
    /// more of that one by now, the step is refused. Null where that does not matter.</summary>
    public long? EventsSeen { get; init; }

    /// <summary>Writes over somebody else's file where one is in the place of an answer.</summary>
    public bool Force { get; init; }

    /// <summary>Makes something that is told how many of how many are done, for work that takes long; by default nobody listens.</summary>
    public Func<string, Action<int, int>> Progress { get; init; } = _ => (_, _) => { };

    /// <summary>True to open the shop without its own settings and catalog, for what reads them itself and tells their faults.</summary>
    public bool FilesUnread { get; init; }

    /// <summary>The address by which somebody came who is not at the machine itself; null for anybody else.</summary>
    public string? Came { get; init; }

    /// <summary>True when somebody said the moment; false when it is the clock's.</summary>
    public bool Dated { get; init; }

    /// <summary>What the clock says, where another moment is used; null where that is not known.</summary>
    public DateTime? Clock { get; init; }
}
