namespace JarLabel.Printing.Printers;

/// <summary>How a job stands (RFC 8011 section 5.3.7).</summary>
public enum JobState
{
    /// <summary>The printer did not say.</summary>
    Unknown = 0,

    /// <summary>It waits its turn.</summary>
    Pending = 3,

    /// <summary>It is held.</summary>
    Held = 4,

    /// <summary>It is being printed.</summary>
    Processing = 5,

    /// <summary>It began and stands still.</summary>
    Stopped = 6,

    /// <summary>Somebody cancelled it.</summary>
    Canceled = 7,

    /// <summary>The printer gave it up.</summary>
    Aborted = 8,

    /// <summary>It is on paper.</summary>
    Completed = 9,
}
