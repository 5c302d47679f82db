namespace JarLabel.Store.Files;

/// <summary>Tells by its first bytes whether a file was written by this program, and as what.</summary>
internal static class OwnMark
{
    private const int Head = 1024;

    /// <summary>What the file is of ours; none when it cannot be read.</summary>
    internal static OwnKind Of(string path)
    {
        try
        {
            using var stream = InputFile.Open(path);
            var head = new byte[Head];
            return Of(head.AsSpan(0, stream.ReadAtLeast(head, Head, throwOnEndOfStream: false)));
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return OwnKind.None;
        }
    }

    /// <summary>What begins like this.</summary>
    internal static OwnKind Of(ReadOnlySpan<byte> bytes)
    {
        var head = bytes[..Math.Min(bytes.Length, Head)];
        return head.StartsWith("%PDF-"u8) ? If(head.IndexOf("/Creator (JarLabel)"u8) > 0, OwnKind.Pdf)
            : head.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47]) ? If(head.IndexOf("Software\0JarLabel"u8) > 0, OwnKind.Png)
            : head.StartsWith("<svg "u8) ? If(head.IndexOf("<!-- JarLabel -->"u8) > 0, OwnKind.Svg)
            : head.StartsWith("BEGIN:VCALENDAR"u8) ? If(head.IndexOf("PRODID:-//JarLabel//"u8) > 0, OwnKind.Calendar)
            : head.StartsWith("{\"ledger\":\""u8) ? If(head.IndexOf("\"seal\":\""u8) > 0, OwnKind.Export)
            : If(head.IndexOf("<meta name=\"generator\" content=\"JarLabel\">"u8) > 0 || head.StartsWith("A copy of the pages of jars as of "u8), OwnKind.Web);
    }

    private static OwnKind If(bool so, OwnKind kind) => so ? kind : OwnKind.None;
}
