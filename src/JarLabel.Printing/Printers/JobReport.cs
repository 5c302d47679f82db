namespace JarLabel.Printing.Printers;

/// <summary>How a job stands at one moment.</summary>
/// <param name="Id">Its number at the printer.</param>
/// <param name="State">How it stands.</param>
/// <param name="Sheets">Sheets or pages done; null when unsaid.</param>
/// <param name="Why">Why it stands so, in words; null when unsaid.</param>
/// <param name="Troubled">True when a completed job had errors.</param>
public sealed record JobReport(int Id, JobState State, int? Sheets, string? Why, bool Troubled)
{
    /// <summary>True when it goes no further.</summary>
    public bool IsOver => State is JobState.Canceled or JobState.Aborted or JobState.Completed;
}
