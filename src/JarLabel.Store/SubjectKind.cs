namespace JarLabel.Store;

/// <summary>What an event of the ledger can be about. The lower-case name is what the database and the export say.</summary>
public enum SubjectKind
{
    /// <summary>A jar of mixed shellac.</summary>
    Jar,

    /// <summary>A bag of dry flakes.</summary>
    Bag,

    /// <summary>A bottle of solvent.</summary>
    Bottle,

    /// <summary>A sheet of label stock that is in use.</summary>
    Sheet,
}
