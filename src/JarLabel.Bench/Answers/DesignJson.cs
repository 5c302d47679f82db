namespace JarLabel.Bench.Answers;

/// <summary>A label design for a program.</summary>
internal sealed record DesignJson(string Id, string Title, double WidthMillimeters, double HeightMillimeters);
