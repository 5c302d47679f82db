namespace JarLabel.Store;

/// <summary>How long the ledger waits for another program.</summary>
internal static class Patience
{
    /// <summary>For the write lock. Well over the ten seconds that nobody is to fail within.</summary>
    internal static readonly TimeSpan ToWrite = TimeSpan.FromSeconds(15);

    /// <summary>For the moments in which another program opens, repairs or closes the database.</summary>
    internal static readonly TimeSpan ToReach = TimeSpan.FromSeconds(12);
}
