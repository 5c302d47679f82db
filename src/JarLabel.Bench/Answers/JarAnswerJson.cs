using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What every command about one jar says to a program.</summary>
internal sealed record JarAnswerJson(
    JarJson Jar,
    RecipeJson? Recipe,
    JsonNode? Step,
    HazardsJson Hazards,
    LabelJson? Label,
    IReadOnlyList<JsonNode>? History,
    IReadOnlyList<Problem> Warnings)
{
    /// <summary>New jars that came of it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<JarAnswerJson>? Made { get; init; }

    /// <summary>The label that was scanned.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ScannedJson? Scanned { get; init; }
}
