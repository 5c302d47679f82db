using JarLabel.Bench.Mixing;
using JarLabel.Bench.Steps;
using JarLabel.Bench.Typing;

namespace JarLabel.Bench.Lists;

/// <summary>One row of a list of batches: its columns are the fields of <c>mix</c>, read as that step reads them.</summary>
internal static class BatchRow
{
    /// <summary>All columns there are. Bags and bottles are drawn from one batch at a time.</summary>
    internal static IReadOnlyList<string> Columns => field ??= [.. MixStep.Request.Fields.Select(one => one.Name).Except([Shared.Bag.Field.Name, Shared.Bottle.Field.Name]), JarList.Copies];

    /// <summary>Columns there must be; beside them one that says how much.</summary>
    internal static IReadOnlyList<string> Needed => field ??= [.. MixStep.Request.Fields.Where(one => one.IsNeeded).Select(one => one.Name)];

    /// <summary>How many labels the jar gets.</summary>
    internal static int? Copies(ListRow row) => row.Value(JarList.Copies, Words.WholeNumber(1, JarList.MostCopies));

    /// <summary>The batch as it is wanted; faults stay with the row.</summary>
    internal static MixRequest Request(Workbench bench, ListRow row) => row.Read(bench, MixStep.Request);
}
