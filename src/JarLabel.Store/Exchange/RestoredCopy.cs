namespace JarLabel.Store.Exchange;

/// <summary>The copy of a backup that will be the ledger: written beside its place, brought up to date, and checked event by event.</summary>
internal static class RestoredCopy
{
    /// <summary>Writes the copy; the problems, if it is not whole.</summary>
    internal static IReadOnlyList<Problem> Write(Database backup, PartFile part, string source, IJarReader reader, ShopFolder folder)
    {
        backup.Execute("VACUUM INTO $1", part.Path);
        using (var copy = LedgerOpener.OpenCopy(part.Path, source))
        {
            CarriedFiles.Drop(copy);
            if (Faults(copy, source, reader, folder) is { Count: > 0 } faults)
            {
                return faults;
            }
        }

        part.Stream.FlushToDisk();
        return [];
    }

    /// <summary>What a check of the whole ledger finds, the written files left out: those are the shop's and not the backup's.</summary>
    internal static IReadOnlyList<Problem> Faults(Database ledger, string source, IJarReader reader, ShopFolder folder)
    {
        var events = new EventTable(ledger, source);
        var jars = new JarIndex(ledger, events, reader, source);
        return LedgerOpener.SchemaOf(ledger) < Migrations.Newest || jars.IsStale() ? [] : new Verifier(ledger, events, jars, reader, folder).Run().Damage;
    }
}
