namespace JarLabel.Store.Schema;

/// <summary>The file <c>empty-ledger.db</c>, embedded in this assembly: a ledger without events, as the steps of <see cref="Migrations"/>
/// make it, so that a new shop need not take them all. A step younger than the file is taken when the new ledger is opened.</summary>
internal static class EmptyLedger
{
    private const int IdLength = 32;

    /// <summary>Writes a ledger with an identity of its own into the open file, and waits until the disk has it.</summary>
    internal static void Write(Microsoft.Win32.SafeHandles.SafeFileHandle file)
    {
        var bytes = Bytes();
        Span<byte> id = stackalloc byte[IdLength];
        id.Fill((byte)'0');
        var place = bytes.IndexOf(id);
        _ = Guid.NewGuid().TryFormat(id, out _, "N");
        RandomAccess.Write(file, bytes, 0);
        RandomAccess.Write(file, id, place);
        RandomAccess.FlushToDisk(file);
    }

    private static unsafe ReadOnlySpan<byte> Bytes()
    {
        using var stream = typeof(EmptyLedger).Assembly.GetManifestResourceStream("empty-ledger.db") as UnmanagedMemoryStream
            ?? throw new InvalidOperationException("The program was built without its empty ledger.");
        return new ReadOnlySpan<byte>(stream.PositionPointer, checked((int)stream.Length));
    }
}
