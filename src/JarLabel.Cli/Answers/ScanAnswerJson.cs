using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>scan</c> says of several codes at once.</summary>
internal sealed record ScanAnswerJson(IReadOnlyList<JarAnswerJson> Jars, IReadOnlyList<Problem> Warnings);
