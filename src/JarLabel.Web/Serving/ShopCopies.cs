namespace JarLabel.Web.Serving;

/// <summary>The whole shop as a file that a browser takes away. It is written aside, sent and gone; the shop stays as it is.</summary>
internal sealed class ShopCopies
{
    /// <summary>The address of a backup.</summary>
    internal const string Backup = "backup";

    /// <summary>The address of every event as text.</summary>
    internal const string Export = "export";

    private readonly Lock gate = new();

    /// <summary>The file, or why there is none. One is made at a time.</summary>
    internal Reply Take(Workbench bench, string which)
    {
        lock (gate)
        {
            if (!Room().TryGet(out var room, out var full))
            {
                return Reply.Refused(503, full);
            }

            var file = Path.Combine(room.FullName, which);
            var written = which == Backup ? LedgerCare.Backup(bench, file).Then<string>(report => report.File) : LedgerCare.Export(bench, file).Then<string>(report => report.File);
            if (written.TryGet(out var path, out var problems))
            {
                return new Reply(200, "application/octet-stream", default) { FileName = Named(bench, which), Content = new PassingFile(room, path) };
            }

            room.Delete(recursive: true);
            return Reply.Refused(503, problems);
        }
    }

    /// <summary>A folder of its own, which nobody else on this machine may look into.</summary>
    private static Result<DirectoryInfo> Room()
    {
        try
        {
            return Directory.CreateTempSubdirectory("jarlabel-");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return WebProblems.NoRoomForCopy(fault.Message);
        }
    }

    private static string Named(Workbench bench, string which) => string.Create(
        CultureInfo.InvariantCulture, $"shop-{which}-{bench.Now:yyyy-MM-dd}.{(which == Backup ? "db" : "jsonl")}");
}

/// <summary>A file that is read once and is gone then, with the folder it lay in.</summary>
/// <param name="room">The folder.</param>
/// <param name="path">The file.</param>
internal sealed class PassingFile(DirectoryInfo room, string path) : IDisposable
{
    /// <summary>What it holds.</summary>
    internal FileStream Stream { get; } = File.OpenRead(path);

    public void Dispose()
    {
        Stream.Dispose();
        room.Delete(recursive: true);
    }
}
