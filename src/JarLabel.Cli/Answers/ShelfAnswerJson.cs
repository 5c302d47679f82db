using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>shelf</c> says to a program.</summary>
internal sealed record ShelfAnswerJson(IReadOnlyList<ShelfJarJson> Jars, double TotalMilliliters, IReadOnlyList<Problem> Warnings);
