using System.Text.Json.Serialization;
using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>keeping</c> says to a program.</summary>
internal sealed record KeepingAnswerJson(double StillGood, IReadOnlyList<LifeEstimateJson> Kinds, IReadOnlyList<Problem> Warnings)
{
    /// <summary>How ageing follows warmth.</summary>
    public AgingJson? Aging { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Drawing { get; init; }
}
