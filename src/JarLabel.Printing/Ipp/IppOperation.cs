namespace JarLabel.Printing.Ipp;

/// <summary>What is asked of a printer (RFC 8011 section 5.4.15; CUPS' own two).</summary>
public enum IppOperation : ushort
{
    /// <summary>Print this document.</summary>
    PrintJob = 0x0002,

    /// <summary>Would you print it?</summary>
    ValidateJob = 0x0004,

    /// <summary>Stop this job.</summary>
    CancelJob = 0x0008,

    /// <summary>How does this job stand?</summary>
    GetJobAttributes = 0x0009,

    /// <summary>Which jobs are there?</summary>
    GetJobs = 0x000A,

    /// <summary>What can you do, and how do you stand?</summary>
    GetPrinterAttributes = 0x000B,

    /// <summary>CUPS: which queues are there?</summary>
    CupsGetPrinters = 0x4002,
}
