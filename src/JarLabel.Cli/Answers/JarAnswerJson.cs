using System.Text.Json.Nodes;
using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What every command about one jar says to a program.</summary>
internal sealed record JarAnswerJson(
    JarJson Jar,
    RecipeJson? Recipe,
    HazardsJson Hazards,
    LabelJson? Label,
    IReadOnlyList<JsonNode>? History,
    IReadOnlyList<Problem> Warnings);
