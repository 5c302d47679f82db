using JarLabel.Core.Keeping;

namespace JarLabel.Bench.Answers;

/// <summary>How long one kind of jar keeps on a shelf of the shop, for a program. No date is set later than 12 months, whatever is said here.</summary>
internal sealed record ShelfLifeJson(string Shelf, double Celsius, double ClaimedMonths, double Months, double LowMonths, double HighMonths)
{
    internal static ShelfLifeJson Of(string shelf, double celsius, LifeEstimate e) => new(shelf, celsius, e.BaseMonths, e.Months, e.Low, e.High);
}
