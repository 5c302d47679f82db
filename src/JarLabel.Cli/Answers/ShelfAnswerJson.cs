using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>shelf</c> says to a program: the jars asked for, their liquid, and what stands on every shelf altogether.</summary>
internal sealed record ShelfAnswerJson(IReadOnlyList<ShelfJarJson> Jars, double TotalMilliliters, IReadOnlyList<ShelfTotalJson> Shelves, IReadOnlyList<Problem> Warnings);
