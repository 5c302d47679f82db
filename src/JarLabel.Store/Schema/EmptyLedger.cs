using Microsoft.Win32.SafeHandles;

namespace JarLabel.Store.Schema;

/// <summary>The file <c>empty-ledger.db</c>, embedded in this assembly: a ledger without events, as the steps of <see cref="Migrations"/>
/// make it, so that a new shop need not take them all. A step younger than the file is taken when the new ledger is opened.</summary>
internal static class EmptyLedger
{
    /// <summary>What stands in the file where a ledger has its identity.</summary>
    private static ReadOnlySpan<byte> NoId => "00000000000000000000000000000000"u8;

    /// <summary>Writes a ledger with an identity of its own into the open file, and waits until the disk has it.</summary>
    internal static void Write(SafeFileHandle file)
    {
        var ledger = EmbeddedFile.Read(typeof(EmptyLedger).Assembly, "empty-ledger.db");
        _ = Encoding.ASCII.GetBytes(Guid.NewGuid().ToString("N"), ledger.AsSpan(ledger.AsSpan().IndexOf(NoId)));
        try
        {
            RandomAccess.Write(file, ledger, 0);
        }
        catch (ArgumentOutOfRangeException fault)
        {
            throw DiskFile.TooLarge(fault);
        }

        RandomAccess.FlushToDisk(file);
    }
}
