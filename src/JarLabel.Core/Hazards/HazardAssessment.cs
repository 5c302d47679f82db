namespace JarLabel.Core.Hazards;

/// <summary>What a jar's contents are under one set of rules, and what its label and card must say for it.</summary>
public sealed record HazardAssessment
{
    /// <summary>Whose rules.</summary>
    public required RuleSet Rules { get; init; }

    /// <summary>The classes in the order of the standard, each with the reason.</summary>
    public required IReadOnlyList<Hazard> Hazards { get; init; }

    /// <summary>Danger drops warning.</summary>
    public SignalWord Signal => Hazards.Select(h => h.Class.Signal).DefaultIfEmpty(SignalWord.None).Max();

    /// <summary>The signal word as printed, or null.</summary>
    public string? SignalText => Signal == SignalWord.None ? null : Signal.ToString();

    /// <summary>Pictogram codes, ascending, after precedence.</summary>
    public required IReadOnlyList<string> Pictograms { get; init; }

    /// <summary>Standard abbreviations such as <c>Flam. Liq. 2</c>, each once.</summary>
    public IReadOnlyList<string> ClassCodes => [.. Hazards.Select(h => h.Class.Code).Distinct()];

    /// <summary>Hazard statement codes, ascending.</summary>
    public IReadOnlyList<string> Statements =>
        [.. Hazards.Select(h => h.Class.Statement).Distinct().OrderBy(code => !code.StartsWith('H')).ThenBy(code => code, StringComparer.Ordinal)];

    /// <summary>All precautionary statement codes, the most important first: for the card.</summary>
    public required IReadOnlyList<string> Precautions { get; init; }

    /// <summary>The about six that a label carries.</summary>
    public IReadOnlyList<string> LabelPrecautions => [.. Precautions.Take(Core.Hazards.Precautions.OnLabel)];

    /// <summary>Acute toxicity estimate by mouth, mg/kg; null when nothing counts.</summary>
    public decimal? OralAte { get; init; }

    /// <summary>Acute toxicity estimate through the skin, mg/kg; null when nothing counts.</summary>
    public decimal? DermalAte { get; init; }

    /// <summary>Acute toxicity estimate of the vapour, mg/L over four hours; null when nothing counts.</summary>
    public decimal? VaporAte { get; init; }

    /// <summary>Closed-cup flash point, °C, often an estimate; null when unknown or when nothing burns.</summary>
    public double? FlashPointCelsius { get; init; }

    /// <summary>Flammable-liquid category, 1 to 4; null when it is none.</summary>
    public int? FlammableCategory { get; init; }

    /// <summary>True when the wording of <see cref="PoisonWords"/> belongs on the label.</summary>
    public bool PoisonWording { get; init; }

    /// <summary>True for what a list marks as poison: by that wording, or by the skull and crossbones of its classes.</summary>
    public bool CanPoison => PoisonWording || Pictograms.Contains("GHS06");

    /// <summary>Methanol, percent by weight, at the most.</summary>
    public decimal MethanolPercent { get; init; }

    /// <summary>True when there is enough methanol in it that whoever swallowed it calls at once.</summary>
    public bool MethanolCounts => MethanolPercent >= Core.Hazards.Precautions.MethanolCalledFrom;

    /// <summary>False when nobody knows what is in it, and the answer is the worst of what it may be.</summary>
    public required bool CompositionKnown { get; init; }

    /// <summary>What is not known, in whole sentences.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>The figures it stands on that nobody has looked up in their source.</summary>
    public IReadOnlyList<string> Unverified { get; init; } = [];

    /// <summary>This answer for contents that were poured from these solvents, whose compositions may be from memory too.</summary>
    public HazardAssessment PouredFrom(IEnumerable<Solvent> solvents) =>
        this with { Unverified = [.. solvents.SelectMany(UnverifiedFigures.Of).Distinct(), .. Unverified] };

    /// <summary>A sentence per class.</summary>
    public IReadOnlyList<string> Why => [.. Hazards.Select(h => $"{h.Class.Code}, {h.Class.Statement}: {h.Why}")];
}
