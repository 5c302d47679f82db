namespace JarLabel.Bench.Answers;

/// <summary>What a jar gives to a line, for a program.</summary>
internal sealed record PlanJarJson(int Line, string Jar, double TakeMilliliters, double AddMilliliters, double CutPoundsPerGallon, double GivesMilliliters, string UseBy, bool TestFirst);
