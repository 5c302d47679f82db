using System.Globalization;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Answers;

/// <summary>A bag of flakes for a program.</summary>
internal sealed record BagJson(int Number, string Id, string Grade, double BoughtGrams, double LeftGrams, string Made, bool OnHand, string? Note)
{
    internal static BagJson Of(Bag bag) => new(
        bag.Number.Value, bag.Number.ToString(), bag.Grade, bag.Bought.Grams, bag.Left.Grams, bag.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), bag.OnHand, bag.Note);
}
