using JarLabel.Bench.Printing;
using JarLabel.Printing.Printers;

namespace JarLabel.Web.Printing;

/// <summary>A label on its way to paper. A printer may work for minutes and no page waits that long: it goes on by itself, and whoever looks is
/// told how it stands.</summary>
/// <param name="printer">The printer's name, as it was chosen.</param>
internal sealed class PaperRun(string printer)
{
    private volatile JobReport? last;
    private volatile PrintOutcome? outcome;

    /// <summary>The printer's name, as it was chosen.</summary>
    internal string Printer => printer;

    /// <summary>How the job stands; null before the printer has taken it.</summary>
    internal JobReport? Last => last;

    /// <summary>How it went; null while it goes.</summary>
    internal PrintOutcome? Outcome => outcome;

    internal void Tell(JobReport report) => last = report;

    internal void End(PrintOutcome how) => outcome = how;
}
