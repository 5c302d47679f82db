namespace JarLabel.Store;

/// <summary>What a ledger is opened for.</summary>
public enum LedgerMode
{
    /// <summary>To look things up: creates nothing, holds no write lock, works in a read-only folder.</summary>
    Read,

    /// <summary>To record: creates the shop folder and the ledger where there is none.</summary>
    Write,
}
