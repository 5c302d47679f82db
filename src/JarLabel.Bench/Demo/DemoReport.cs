namespace JarLabel.Bench.Demo;

/// <summary>What a demo shop holds once it is built.</summary>
/// <param name="Folder">Where it is.</param>
/// <param name="Jars">How many jars were filled.</param>
/// <param name="Files">The files written, in order of their names.</param>
/// <param name="Until">The day after which nothing more happens in it.</param>
public sealed record DemoReport(string Folder, int Jars, IReadOnlyList<string> Files, DateOnly Until);
