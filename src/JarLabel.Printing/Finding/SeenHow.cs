namespace JarLabel.Printing.Finding;

/// <summary>How a printer came to be known.</summary>
public enum SeenHow
{
    /// <summary>The shop has named it.</summary>
    Named,

    /// <summary>A queue of this machine's print server.</summary>
    Queue,

    /// <summary>It answered a call on the network.</summary>
    Network,
}
