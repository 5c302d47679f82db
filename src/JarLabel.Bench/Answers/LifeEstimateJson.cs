using JarLabel.Core.Keeping;

namespace JarLabel.Bench.Answers;

/// <summary>How long one kind of jar keeps, for a program; the likeliest distribution of its tests alone where they have one.</summary>
internal sealed record LifeEstimateJson(
    string Keeping, string Solvent, double ClaimedMonths, double Months, double LowMonths, double HighMonths, int Tests, int Jars, int Failed, int OtherJars, double? FitShape, double? FitScaleDays)
{
    internal static LifeEstimateJson Of(LifeEstimate e)
    {
        var fit = WeibullFit.Of(e.Lives);
        return new(
            e.Class.Keeping, e.Class.Solvent, e.BaseMonths, e.Months, e.Low, e.High, e.Tests, e.Lives.Count, e.Lives.Count(l => l.Ended), e.Related, fit?.Shape, fit?.Scale);
    }
}
