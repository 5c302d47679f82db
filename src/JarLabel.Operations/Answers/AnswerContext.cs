namespace JarLabel.Operations.Answers;

/// <summary>The compiled shapes of everything that <c>--json</c> prints.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(ProblemsJson))]
[JsonSerializable(typeof(JarAnswerJson))]
[JsonSerializable(typeof(LabelsAnswerJson))]
[JsonSerializable(typeof(CalibrationJson))]
[JsonSerializable(typeof(MixedListJson))]
[JsonSerializable(typeof(ScanAnswerJson))]
[JsonSerializable(typeof(SheetsInUseJson))]
[JsonSerializable(typeof(ExportAnswerJson))]
[JsonSerializable(typeof(ImportAnswerJson))]
[JsonSerializable(typeof(BackupAnswerJson))]
[JsonSerializable(typeof(RestoreAnswerJson))]
[JsonSerializable(typeof(VerifyAnswerJson))]
[JsonSerializable(typeof(DemoAnswerJson))]
[JsonSerializable(typeof(ShelfAnswerJson))]
[JsonSerializable(typeof(BagAnswerJson))]
[JsonSerializable(typeof(BagsAnswerJson))]
[JsonSerializable(typeof(BottleAnswerJson))]
[JsonSerializable(typeof(BottlesAnswerJson))]
[JsonSerializable(typeof(CanAnswerJson))]
[JsonSerializable(typeof(CansAnswerJson))]
[JsonSerializable(typeof(KeepingAnswerJson))]
[JsonSerializable(typeof(PlanAnswerJson))]
[JsonSerializable(typeof(NoticeAnswerJson))]
[JsonSerializable(typeof(SheetsAnswerJson))]
[JsonSerializable(typeof(DesignsAnswerJson))]
[JsonSerializable(typeof(GradesAnswerJson))]
[JsonSerializable(typeof(SolventsAnswerJson))]
[JsonSerializable(typeof(CheckAnswerJson))]
[JsonSerializable(typeof(PrintersAnswerJson))]
[JsonSerializable(typeof(PrintedJson))]
[JsonSerializable(typeof(IReadOnlyList<Problem>))]
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

/// <summary>What <c>calc blend</c> says.</summary>
internal sealed record BlendAnswerJson(double MakesMilliliters, double CutPoundsPerGallon);

/// <summary>What <c>check</c> says to a program when all is well.</summary>
internal sealed record CheckAnswerJson(int Files, IReadOnlyList<Problem> Warnings);

/// <summary>What <c>calc coverage</c> says.</summary>
internal sealed record CoverageAnswerJson(double LiquidMilliliters, double DryMicrometersPerCoat, double FlakesGrams);

/// <summary>What <c>calc density</c> says.</summary>
internal sealed record DensityAnswerJson(double KilogramsPerCubicMeter, double PoundsPerGallon, double ExpansionPerKelvin);

/// <summary>What <c>calc hazards</c> says.</summary>
internal sealed record HazardsAnswerJson(HazardsJson Hazards);

/// <summary>What <c>--json</c> prints when the input has to be mended.</summary>
internal sealed record ProblemsJson(IReadOnlyList<Problem> Problems);

/// <summary>What <c>calc purge</c> says.</summary>
internal sealed record PurgeAnswerJson(double Minutes, double Fraction, double MixingFactor);

/// <summary>What <c>calc mix</c> says.</summary>
internal sealed record RecipeAnswerJson(RecipeJson Recipe, IReadOnlyList<Core.Problem> Warnings);

/// <summary>What <c>calc solids</c> says; solids are fractions.</summary>
internal sealed record SolidsAnswerJson(double CutPoundsPerGallon, double SolidsByWeight, double SolidsByVolume, double GramsPerLiterOfLiquid, double PoundsPerGallonOfLiquid);

/// <summary>What <c>calc thicken</c> says.</summary>
internal sealed record ThickenAnswerJson(double AddGrams, double MakesMilliliters, double CutPoundsPerGallon);

/// <summary>What <c>calc thin</c> says.</summary>
internal sealed record ThinAnswerJson(double AddMilliliters, double PartsPerPart, double MakesMilliliters, double CutPoundsPerGallon);
