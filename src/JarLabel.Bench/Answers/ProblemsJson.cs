using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>--json</c> prints when the input has to be mended.</summary>
internal sealed record ProblemsJson(IReadOnlyList<Problem> Problems);
