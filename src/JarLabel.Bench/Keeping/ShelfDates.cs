using JarLabel.Bench.Recording;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Store;
using JarLabel.Store.Index;

namespace JarLabel.Bench.Keeping;

/// <summary>The jars of a shelf with the dates that the shop's drying tests say now.</summary>
public static class ShelfDates
{
    /// <summary>The dates now of those listed jars whose dates on record are clearly others.</summary>
    public static Result<IReadOnlyDictionary<int, KeepingDates>> Of(Workbench bench, LedgerView view, IReadOnlyList<JarEntry> jars)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(view);
        return ShopLives.Of(bench, view).Then(lives => lives.SaysMore
            ? Changing.BlendJars.All(jars.Select(j => JarHistory.Of(JarNumber.From(j.Number), view.EventsOf(Subject.Jar(j.Number)))))
                .Then(all => Result<IReadOnlyDictionary<int, KeepingDates>>.Of(all
                    .Select(h => LearnedDates.Mark(bench, lives, h))
                    .Where(j => j.Learned is not null)
                    .ToDictionary(j => j.Number.Value, j => j.Learned!)))
            : Result<IReadOnlyDictionary<int, KeepingDates>>.Of(new Dictionary<int, KeepingDates>()));
    }

    /// <summary>What to say of them: one caution for all.</summary>
    public static IReadOnlyList<Problem> Cautions(IReadOnlyDictionary<int, KeepingDates> moved) =>
        moved.Count == 0 ? [] : [BenchProblems.UseByOfShelfMoved([.. moved.OrderBy(m => m.Value.UseBy).Select(m => (JarNumber.From(m.Key), m.Value.UseBy))])];
}
