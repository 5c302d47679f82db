namespace JarLabel.Store.Checking;

/// <summary>The running seal of the ledger: every event carries the SHA-256 of the seal before it and of its own fields, so that a
/// row that was changed, exchanged or taken out, by hand or by a failing disk, no longer fits.
/// <para>The hashed bytes: 32 bytes of the seal before (zeros for the first event); sequence as 8 bytes, number and revision as 4 bytes
/// each, little-endian; then subject, at, kind and body in UTF-8, each with its length in bytes before it as a 7-bit variable
/// integer.</para></summary>
internal static class EventChain
{
    /// <summary>The seal before the first event.</summary>
    internal static byte[] Start => new byte[Sha256.Bytes];

    /// <summary>The seal of an event that follows <paramref name="before"/>.</summary>
    internal static byte[] Next(ReadOnlySpan<byte> before, EventRow row)
    {
        using var sealedBytes = new MemoryStream(256 + row.Body.Length);
        using var writer = new BinaryWriter(sealedBytes);
        writer.Write(before);
        writer.Write(row.Sequence);
        writer.Write(row.Of.Number);
        writer.Write(row.Revision);
        writer.Write(SubjectWords.Of(row.Of.Kind));
        writer.Write(row.At);
        writer.Write(row.Kind);
        writer.Write(row.Body);
        writer.Flush();
        return Sha256.Of(sealedBytes.GetBuffer().AsSpan(0, (int)sealedBytes.Length));
    }
}
