namespace JarLabel.Store;

/// <summary>What can be wrong with the shop folder and the ledger in it.</summary>
internal static class StoreProblems
{
    /// <summary>The code of every fault inside <c>shop.json</c>.</summary>
    internal const string SettingsCode = "JL404";

    internal const string DamagedCode = "JL410";
    internal const string NewerCode = "JL411";
    internal const string LabelOfUnknownCode = "JL456";

    private static Message Restore => Message.Of(
        $"{new Remedy("restore", new InputName("file"))} puts your latest backup in its place and keeps what stands here under another name; {new Remedy("verify")} says what is damaged.");

    internal static Problem ShopIsAFile(string path) =>
        new("JL407", Message.Of($"The shop must be a folder, and this is a file. Name another, for example {new InputName("shop", "my-shop")}."), path);

    internal static Problem ShopNotReachable(string path, string why) =>
        new("JL402", Message.Of($"The shop folder cannot be opened: {why} Check that it exists and is yours, or name another with {new InputName("shop")}."), path);

    internal static Problem ShopReadOnly(string path) =>
        new("JL403", Message.Of($"Nothing can be written in the shop folder, so nothing was recorded. Make it writable, or name another with {new InputName("shop")}."), path);

    internal static Problem NoSuchShop(string path) =>
        new("JL405", Message.Of($"There is no such shop folder. Check the name; {new Remedy("shop init")} makes a new one."), path);

    internal static Problem SettingsNotWritten(string path, string why) =>
        new("JL406", $"The shop's settings could not be written, so they stay as they were: {why}", path);

    internal static Problem Damaged(string path, string why) =>
        new(DamagedCode, Message.Of($"The ledger is damaged ({why}). Nothing was changed. {Restore}"), path);

    internal static Problem Newer(string path, long found, int known) =>
        new(NewerCode, string.Create(CultureInfo.InvariantCulture,
            $"The ledger was written by a newer JarLabel (schema {found}; this one knows up to {known}). Update JarLabel; nothing was changed."), path);

    internal static Problem NotOurs(string path) =>
        new("JL412", Message.Of($"This is a database, but not a JarLabel ledger. Move it away or name another shop folder with {new InputName("shop")}."), path);

    internal static Problem Held(string path, TimeSpan waited) =>
        new("JL413", string.Create(CultureInfo.InvariantCulture,
            $"Another program has kept the ledger for {waited.TotalSeconds:0} seconds: another jarlabel, a database viewer with unsaved changes, or a program that copies or synchronises the folder. Close it and try again; nothing was recorded."), path);

    internal static Problem DiskFull(string path) =>
        new("JL414", "The disk is full, so nothing was recorded. Make room and try again.", path);

    internal static Problem FileLimit(string path, long limit) =>
        new("JL474", string.Create(CultureInfo.InvariantCulture, $"The system lets no file grow beyond {limit} bytes here (\"ulimit -f\"), and the ledger needs more, so nothing was recorded. Raise the limit and try again."), path);

    internal static Problem DiskFails(string path, string why) =>
        new("JL415", $"The disk did not do what was asked ({why}), so nothing was recorded. Check the disk, and that the folder is still there.", path);

    internal static Problem CommitUnsure(string path, string why) =>
        new("JL485", Message.Of($"The disk failed in the moment of recording ({why}), and nobody can tell whether it has the step: {new Remedy("shelf")} and {new Remedy("jar")} show it once the disk is well. Check the disk, and that the folder is still there."), path);

    internal static Problem FileNotWritten(string path, string why) =>
        new("JL416", $"The file could not be written, so nothing was recorded: {why}", path);

    internal static Problem FileNotMoved(string place, string part, Message why) =>
        new("JL417", Message.Of($"What happened is recorded, but the finished file could not yet be put in its place: {why} It waits as \"{part}\"; the next command that records tries again."), place);

    internal static Problem FileStillWaits(string place, string part, Message why) =>
        new("JL417", Message.Of($"A file of an earlier step still waits to be put in its place: {why} It is kept as \"{part}\"; the next command that records tries again."), place);

    internal static Problem EventDamaged(string path, long sequence) =>
        new("JL418", Message.Of(
            $"Event {sequence} of the ledger is not what was recorded: it was changed from outside, or the disk lost a bit. {Restore}"), path);

    internal static Problem EventsMissing(string path, long indexed, long found) =>
        new("JL419", Message.Of(
            $"The ledger's last events are gone: {indexed} were recorded, {found} are there. {Restore}"), path);

    internal static Problem LedgerMissing(string path, string left) =>
        new("JL420", Message.Of($"The ledger is missing, but {left} from it is still here. A new one would give out jar numbers that are already on glass. {new Remedy("restore", new InputName("file"))} puts your latest backup in its place, or begin in an empty folder."), path);

    internal static Problem RestoreBroken(string path, string aside) =>
        new("JL420", Message.Of($"The ledger is missing: a restore ended before it was done. What stood here is kept in \"{aside}\": {new Remedy("restore")} with that file puts it back, or begin the restore again."), path);

    internal static Problem NumbersMissing(SubjectKind kind, int first, int last) =>
        new("JL454", Message.Of($"{Capital.Of(Run(kind, first, last))} {(first == last ? "was" : "were")} given out in this shop, and the ledger does not know of {(first == last ? "it" : "them")}: an older backup stands in its place. No number is given twice; new ones go on above. A newer backup brings back what is missing: {new Remedy("restore", new InputName("file"), new InputName("force"))}. What was recorded since the older one was put in place is then only in the ledger that is kept aside."));

    internal static Problem LabelOfUnknown(string place) =>
        new(LabelOfUnknownCode, "There is a label of this number already, and the ledger does not know of it: an older backup stands in its place, or the label comes from another shop. Nothing was recorded, and the label stays. Give the same command again: the new number will be above all labels in the folder.", place);

    internal static string Run(SubjectKind kind, int first, int last) => first == last
        ? string.Create(CultureInfo.InvariantCulture, $"{SubjectWords.Of(kind)} {first}")
        : string.Create(CultureInfo.InvariantCulture, $"{SubjectWords.Of(kind)}s {first} to {last}");

    internal static Problem LogNotOurs(string path, string log) =>
        new("JL452", Message.Of($"Beside the ledger lies a log, {log}, that does not fit it: it is damaged, or it is the log of another ledger that stood here before. Read together they would spoil the ledger, so nothing was read or changed. {new Remedy("restore", new InputName("file", path))} keeps the log under another name and goes on with the ledger as it is without it."), path);

    internal static Problem TooLargeToHold(string path) =>
        new("JL453", "Nothing can be written here, and the ledger with the log beside it is too large to be read in memory. Copy the shop to a place that can be written, and read it there.", path);

    internal static Problem IndexDamaged(string path) =>
        new("JL421", Message.Of($"A list in the ledger is damaged; the events themselves may be whole. {Restore}"), path);

    internal static Problem EventsOfMissing(string path, string of) =>
        new("JL425", Message.Of($"Events of {of} cannot be found, though they were recorded. {Restore}"), path);

    internal static Problem CannotUpdate(string path) =>
        new("JL422", "The ledger is from an older JarLabel and must be brought up to date first, but nothing can be written here. Copy the shop to a place where it can.", path);
}
