using System.Buffers.Binary;

namespace JarLabel.Store.Schema;

/// <summary>The write-ahead log that lies beside a ledger, read as SQLite's file format describes it: which pages it holds, as of the last
/// transaction that was finished. Reading it changes nothing, and asks nothing of the disk but to be read.</summary>
internal sealed class LeftLog
{
    private const int HeaderBytes = 32;
    private const int FrameBytes = 24;
    private readonly Dictionary<uint, int> pages = [];
    private readonly byte[] log;
    private readonly int pageBytes;
    private uint pageCount;

    private LeftLog(byte[] log)
    {
        this.log = log;
        pageBytes = log.Length >= HeaderBytes ? (int)BinaryPrimitives.ReadUInt32BigEndian(log.AsSpan(8)) : 0;
        if (IsHeader())
        {
            TakeFrames();
        }
    }

    /// <summary>The name of the log of a database file.</summary>
    internal static string Of(string ledger) => ledger + "-wal";

    /// <summary>The name of the shared list of what is in the log.</summary>
    internal static string SharedOf(string ledger) => ledger + "-shm";

    /// <summary>True when there is a log that may hold something.</summary>
    internal static bool Stands(string ledger) => new FileInfo(Of(ledger)) is { Exists: true, Length: > HeaderBytes };

    /// <summary>The ledger with what its log holds; throws what the disk throws. When somebody writes the log meanwhile, it is read again.</summary>
    internal static byte[] Merged(string ledger)
    {
        while (true)
        {
            var log = File.Exists(Of(ledger)) ? ReadAll(Of(ledger)) : [];
            var whole = new LeftLog(log).Over(ReadAll(ledger));
            if (log.Length == (File.Exists(Of(ledger)) ? new FileInfo(Of(ledger)).Length : 0))
            {
                return whole;
            }
        }
    }

    /// <summary>True when a database file says in its head that it keeps no log, as every backup does: one beside it is not its own.</summary>
    internal static bool IsDisowned(string ledger)
    {
        Span<byte> head = stackalloc byte[20];
        using var file = OpenShared(ledger);
        return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length && head[18] == 1 && head[19] == 1;
    }

    private byte[] Over(byte[] ledger)
    {
        if (pages.Count > 0)
        {
            Array.Resize(ref ledger, checked((int)pageCount * pageBytes));
            foreach (var (page, at) in pages.Where(page => page.Key <= pageCount))
            {
                log.AsSpan(at, pageBytes).CopyTo(ledger.AsSpan((int)(page - 1) * pageBytes));
            }
        }

        // From here on it has no log.
        if (ledger.Length > 20 && ledger[18] == 2)
        {
            ledger[18] = ledger[19] = 1;
        }

        return ledger;
    }

    private bool IsHeader() => pageBytes is >= 512 and <= 65536 && (Word(0, big: true) & ~1u) == 0x377F0682;

    private void TakeFrames()
    {
        var big = (log[3] & 1) == 1;
        var sum = Sum((0, 0), 0, 24, big);
        if (sum != (Word(24, true), Word(28, true)))
        {
            return;
        }

        var open = new Dictionary<uint, int>();
        for (var at = HeaderBytes; at + FrameBytes + pageBytes <= log.Length; at += FrameBytes + pageBytes)
        {
            sum = Sum(Sum(sum, at, 8, big), at + FrameBytes, pageBytes, big);
            if (!log.AsSpan(at + 8, 8).SequenceEqual(log.AsSpan(16, 8)) || sum != (Word(at + 16, true), Word(at + 20, true)))
            {
                return;
            }

            open[Word(at, true)] = at + FrameBytes;
            if (Word(at + 4, true) is > 0 and var count)
            {
                Commit(open, count);
            }
        }
    }

    private void Commit(Dictionary<uint, int> open, uint count)
    {
        foreach (var (page, at) in open)
        {
            pages[page] = at;
        }

        open.Clear();
        pageCount = count;
    }

    private (uint, uint) Sum((uint A, uint B) sum, int from, int length, bool big)
    {
        for (var at = from; at < from + length; at += 8)
        {
            sum.A += Word(at, big) + sum.B;
            sum.B += Word(at + 4, big) + sum.A;
        }

        return sum;
    }

    private uint Word(int at, bool big) =>
        big ? BinaryPrimitives.ReadUInt32BigEndian(log.AsSpan(at)) : BinaryPrimitives.ReadUInt32LittleEndian(log.AsSpan(at));

    private static byte[] ReadAll(string path)
    {
        using var file = OpenShared(path);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    private static FileStream OpenShared(string path) =>
        PatientFile.Open(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, Patience.ToReach) ?? throw new IOException("another program keeps it.");
}
