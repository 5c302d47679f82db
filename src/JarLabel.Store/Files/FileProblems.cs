namespace JarLabel.Store.Files;

/// <summary>What can be wrong with a file that is to be written.</summary>
internal static class FileProblems
{
    internal static Problem OfTheShop(string path) =>
        new("JL435", "This is a file of the shop's own, or would lie among its own, and is never written over by an answer. Name another, such as one beside the shop folder or in its labels folder.", path);

    internal static Problem NotAFile(string path, FileKind kind) =>
        new("JL436", $"{OfKind(kind)} Wanted is the name of a file, such as \"{Example(path)}\".", path);

    internal static Problem Foreign(string path) =>
        new("JL437", Message.Of($"There is already a file of this name, and JarLabel cannot tell that it wrote it. Name another, or say {new InputName("force")} to write over it."), path);

    internal static Problem ChangedMeanwhile(string path) =>
        new("JL438", "Somebody else wrote or changed this file, or its folder, at this very moment, so it was left alone. Look at it, then try again.", path);

    internal static Problem SettingsHeld(string path, TimeSpan waited) =>
        new("JL439", string.Create(CultureInfo.InvariantCulture, $"Another program has been changing this shop's settings for {waited.TotalSeconds:0} seconds. Close it and try again; nothing was changed."), path);

    internal const string TooLarge = "the system lets no file here grow this large (\"ulimit -f\").";

    internal const string DiskFull = "the disk is full.";

    internal static string OfKind(FileKind kind) => kind switch
    {
        FileKind.Folder => "This is a folder.",
        FileKind.Pipe => "This is a pipe, which ends in another program.",
        FileKind.Device => "This is a device.",
        _ => "This is a socket.",
    };

    private static string Example(string path) => Path.GetExtension(path) is { Length: > 1 } ending ? "jarlabel" + ending : "jarlabel.pdf";
}
