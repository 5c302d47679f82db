using JarLabel.Core.Keeping;

namespace JarLabel.Bench.Answers;

/// <summary>How long one kind of jar keeps, for a program; the likeliest distribution of its tests alone where they have one.</summary>
internal sealed record LifeEstimateJson(
    string Keeping, string Solvent, double ClaimedMonths, double Months, double LowMonths, double HighMonths, int Tests, int Jars, int Failed, int OtherJars, double? FitShape, double? FitScaleDays)
{
    /// <summary>How many of its jars dried hard but slowly when last tested, so that their end is near.</summary>
    public int Slow { get; init; }

    /// <summary>The same on the shop's shelves that are not at 20 °C.</summary>
    public IReadOnlyList<ShelfLifeJson> Shelves { get; init; } = [];

    internal static LifeEstimateJson Of(LifeEstimate e)
    {
        var fit = WeibullFit.Of(e.Lives);
        return new(
            e.Class.Keeping, e.Class.Solvent, e.BaseMonths, e.Months, e.Low, e.High, e.Tests, e.Lives.Count, e.Lives.Count(l => l.Ended), e.Related, fit?.Shape, fit?.Scale)
        {
            Slow = e.Lives.Count(l => l.Expected),
        };
    }
}
