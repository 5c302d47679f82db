namespace JarLabel.Core.Catalog;

/// <summary>What an exposure limit is an average over.</summary>
public enum ExposureKind
{
    /// <summary>Average of a working day of eight (or ten) hours.</summary>
    Shift,

    /// <summary>Average of fifteen minutes.</summary>
    ShortTerm,

    /// <summary>Not to be passed at any moment.</summary>
    Ceiling,

    /// <summary>Immediately dangerous to life or health.</summary>
    Idlh,
}
