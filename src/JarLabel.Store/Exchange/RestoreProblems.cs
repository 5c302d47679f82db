using System.Globalization;
using JarLabel.Core;

namespace JarLabel.Store.Exchange;

/// <summary>Why a backup cannot be put in the ledger's place.</summary>
internal static class RestoreProblems
{
    internal static Problem NotWhole(string backup) =>
        new("JL457", Message.Of($"This is not a whole ledger, so it was not put in place, and nothing was changed. Try another backup, such as {new Remedy("restore", new InputName("file", "ledger-backup.db"))}."), backup);

    internal static Problem InOrder(string ledger, long events) =>
        new("JL458", Message.Of($"The ledger that stands here is in order and holds {events} events, so it was left in its place. With {new InputName("force")} the backup takes its place, and it is kept under another name."), ledger);

    internal static Problem NothingToDo(string ledger, long events) =>
        new("JL458", string.Create(CultureInfo.InvariantCulture, $"This is the ledger itself, with {events} events, and it is in order; there is nothing to put right."), ledger);

    internal static Problem OtherShop(string backup, string ledger) =>
        new("JL424", Message.Of($"This backup is of another shop than the ledger {ledger}, which gave out the same numbers to other jars. Restore it into a folder of its own, named with {new InputName("shop")}, or say {new InputName("force")}."), backup);

    internal static Problem Stuck(string ledger, string why, IReadOnlyList<string> aside) =>
        new("JL459", $"The backup could not be put in place: {why}{(aside.Count == 0 ? " Nothing was changed." : $" What stood here is kept as {string.Join(", ", aside)}.")} Mend that, then give the same command again.", ledger);
}
