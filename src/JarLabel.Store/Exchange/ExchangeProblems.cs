namespace JarLabel.Store.Exchange;

/// <summary>What can be wrong with a backup's place, and with a file of exported events.</summary>
internal static class ExchangeProblems
{
    /// <summary>The code of a line that is not in the export's form.</summary>
    internal const string FormCode = "JL443";

    internal static Problem NotWritten(string path, string why) =>
        new("JL440", $"The file could not be written: {why}", path);

    internal static Problem NotAPlace(string path) =>
        new("JL441", "Wanted is a file name in a folder that exists, and not the ledger itself, such as ledger-backup.db.", path);

    internal static Problem SomethingElse(string path) =>
        new("JL442", Message.Of($"There is already a file of this name, and it is not a backup of this shop. Name another, or say {new InputName("force")} to write over it."), path);

    internal static Problem NotReadable(string path, string why) =>
        new("JL444", $"The file cannot be read: {why}", path);

    internal static Problem NotAnExport(string where) =>
        new("JL445", "This is not a JarLabel export: the first line must say which ledger it is from.", where);

    internal static Problem Foreign(string where) =>
        new("JL446", Message.Of($"This export is from another shop's ledger. Import it into an empty shop folder, named with {new InputName("shop")}; two ledgers cannot be merged, since both gave out the same jar numbers."), where);

    internal static Problem OutOfOrder(string where, long wanted, long found) =>
        new("JL447", string.Create(CultureInfo.InvariantCulture, $"Read event {found}; here belongs event {wanted}. Lines are missing, doubled or exchanged."), where);

    internal static Problem Tampered(string where) =>
        new("JL448", "The line does not fit its seal: it was changed after it was exported.", where);

    internal static Problem Parted(string where) =>
        new("JL449", "From here on the file and this ledger tell different stories: both were recorded in after a copy was made. Keep one of the two.", where);

    internal static Problem CutShort(string file, long wanted, long found) =>
        new("JL450", string.Create(CultureInfo.InvariantCulture, $"The export says it has {wanted} events, and {found} are there: its end is missing."), file);

    internal static Problem LongLine(string where, int most) =>
        new("JL471", Message.Of($"The line is longer than {most / (1024 * 1024)} MB, and an event is a few hundred letters. What {new Remedy("export")} wrote has one event a line."), where);

    internal static Problem NotANumber(string where, Subject of, int most) =>
        new("JL472", string.Create(CultureInfo.InvariantCulture, $"Read {of}; numbers go up from 1, to {most} at most."), where);

    internal static Problem NotARevision(string where, int revision, long most) =>
        new("JL472", string.Create(CultureInfo.InvariantCulture, $"Read revision {revision} of a jar; no more than {most} can have been by this event."), where);

    internal static Problem NotASheetEvent(string where, string kind, string why) =>
        new("JL473", $"Read {Quoted.Of(kind)} of a sheet of labels: {why}", where);

    internal static string BadMoment(string read) => $"Read \"{read}\" as a moment; wanted is local time such as 2026-03-09T14:30:00.";
}
