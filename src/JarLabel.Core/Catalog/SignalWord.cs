namespace JarLabel.Core.Catalog;

/// <summary>The word that leads a hazard label, the milder first.</summary>
public enum SignalWord
{
    /// <summary>No word.</summary>
    None,

    /// <summary>Warning.</summary>
    Warning,

    /// <summary>Danger.</summary>
    Danger,
}
