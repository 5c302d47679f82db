namespace JarLabel.Store.Schema;

/// <summary>What <see cref="LogCheck"/> tells of a ledger with a log beside it.</summary>
internal enum LogVerdict
{
    /// <summary>Open it as usual: the log is its own, or somebody has it open and has looked.</summary>
    Own,

    /// <summary>Nothing can be locked here; it can be read as it stands.</summary>
    Still,

    /// <summary>The two together are no whole ledger, and neither is the file alone.</summary>
    Damaged,
}
