using System.Globalization;
using JarLabel.Core.Jars;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Answers;

/// <summary>A bottle of alcohol for a program.</summary>
internal sealed record BottleJson(
    int Number, string Id, string Solvent, double BoughtMilliliters, double LeftMilliliters, string Since, string Shelf, string? Material, bool OnHand, string? Note)
{
    internal static BottleJson Of(Bottle bottle) => new(
        bottle.Number.Value,
        bottle.Number.ToString(),
        bottle.Solvent,
        bottle.Bought.Milliliters,
        bottle.Left.Milliliters,
        bottle.Since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        bottle.Shelf,
        bottle.Material?.Word(),
        bottle.OnHand,
        bottle.Note);
}
