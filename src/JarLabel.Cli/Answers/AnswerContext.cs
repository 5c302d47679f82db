using System.Text.Json.Serialization;

namespace JarLabel.Cli.Answers;

/// <summary>The compiled shapes of everything that <c>--json</c> prints.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(ProblemsJson))]
[JsonSerializable(typeof(JarAnswerJson))]
[JsonSerializable(typeof(ScanAnswerJson))]
[JsonSerializable(typeof(SheetsInUseJson))]
[JsonSerializable(typeof(ExportAnswerJson))]
[JsonSerializable(typeof(ImportAnswerJson))]
[JsonSerializable(typeof(BackupAnswerJson))]
[JsonSerializable(typeof(VerifyAnswerJson))]
[JsonSerializable(typeof(ShelfAnswerJson))]
[JsonSerializable(typeof(NoticeAnswerJson))]
[JsonSerializable(typeof(SheetsAnswerJson))]
[JsonSerializable(typeof(DesignsAnswerJson))]
[JsonSerializable(typeof(CheckAnswerJson))]
[JsonSerializable(typeof(ShopJson))]
[JsonSerializable(typeof(HazardsAnswerJson))]
[JsonSerializable(typeof(AirAnswerJson))]
[JsonSerializable(typeof(PurgeAnswerJson))]
[JsonSerializable(typeof(CoverageAnswerJson))]
[JsonSerializable(typeof(RecipeAnswerJson))]
[JsonSerializable(typeof(ThinAnswerJson))]
[JsonSerializable(typeof(ThickenAnswerJson))]
[JsonSerializable(typeof(BlendAnswerJson))]
[JsonSerializable(typeof(SolidsAnswerJson))]
[JsonSerializable(typeof(DensityAnswerJson))]
internal sealed partial class AnswerContext : JsonSerializerContext;
