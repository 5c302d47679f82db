namespace JarLabel.Printing.Printers;

/// <summary>How a job ended.</summary>
public enum PrintEnd
{
    /// <summary>The printer says that it is on paper.</summary>
    Printed,

    /// <summary>It is surely not all on paper.</summary>
    Failed,

    /// <summary>It was sent, and nobody can say whether it is on paper.</summary>
    Unknown,
}
