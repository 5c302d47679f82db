namespace JarLabel.Bench.Answers;

/// <summary>What stands on one shelf.</summary>
internal sealed record ShelfTotalJson(string Shelf, int Jars, double Milliliters, int Bottles, double BottleMilliliters);
