namespace JarLabel.Bench.Answers;

/// <summary>A shelf of the shop.</summary>
internal sealed record ShelfSettingJson(string Name, double Celsius);
