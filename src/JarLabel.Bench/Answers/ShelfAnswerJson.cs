using System.Text.Json.Serialization;
using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>shelf</c> says to a program: the jars asked for, their liquid, and what stands on every shelf altogether.</summary>
internal sealed record ShelfAnswerJson(IReadOnlyList<ShelfJarJson> Jars, double TotalMilliliters, IReadOnlyList<ShelfTotalJson> Shelves, IReadOnlyList<Problem> Warnings)
{
    /// <summary>The calendar that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Calendar { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Drawing { get; init; }
}
