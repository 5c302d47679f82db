using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>scan</c> says of several codes at once.</summary>
internal sealed record ScanAnswerJson(IReadOnlyList<JarAnswerJson> Jars, IReadOnlyList<Problem> Warnings)
{
    public IReadOnlyList<BagJson> Bags { get; init; } = [];

    public IReadOnlyList<BottleJson> Bottles { get; init; } = [];
}
