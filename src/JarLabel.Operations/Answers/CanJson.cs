namespace JarLabel.Operations.Answers;

/// <summary>What <c>can add</c> says to a program.</summary>
internal sealed record CanAnswerJson(CanJson Can, HazardsJson Hazards, string File, IReadOnlyList<Problem> Warnings);

/// <summary>What <c>can list</c> says to a program.</summary>
internal sealed record CansAnswerJson(IReadOnlyList<CanJson> Cans);

/// <summary>A can of the shop's own for a program.</summary>
internal sealed record CanJson(
    string Id, string Name, IReadOnlyList<CanShareJson> ByWeight, bool InRanges, bool CompositionKnown, decimal MostMethanolPercent, double WaterPercentByVolume, string? SignalWord, IReadOnlyList<string> HStatements)
{
    internal static CanJson Of(CanOutcome can) => new(
        can.Solvent.Id,
        can.Solvent.Name,
        CanShareJson.Of(can.Solvent.Compositions),
        can.Solvent.Stated.Any(s => s.InRanges),
        can.Solvent.CompositionKnown,
        can.Hazards.MethanolPercent,
        can.Solvent.WaterPercentByVolume,
        can.Hazards.SignalText,
        can.Hazards.Statements);
}

/// <summary>A substance in a can for a program, percent by weight.</summary>
internal sealed record CanShareJson(string Substance, decimal LeastPercent, decimal MostPercent)
{
    internal static IReadOnlyList<CanShareJson> Of(IReadOnlyList<Composition> possible) =>
    [
        .. possible.SelectMany(c => c.Ingredients.Select(i => i.Substance.Id)).Distinct()
            .Select(id => new CanShareJson(id, possible.Min(c => c.PercentOf(id)), possible.Max(c => c.PercentOf(id))))
            .OrderByDescending(share => share.MostPercent),
    ];
}
