namespace JarLabel.Operations.Answers;

/// <summary>What <c>calc air</c> says.</summary>
internal sealed record AirAnswerJson(
    double VaporCubicMeters,
    double PeakPpm,
    double FractionOfLel,
    double FractionOfLimit,
    double? AirCubicMetersPerHourForLimit,
    double AirCubicMetersPerHourForQuarterLel,
    double? LimitPpm,
    bool LimitUnverified,
    IReadOnlyList<string> Limits,
    double? ClearAfterMinutes,
    bool HealthGoverns,
    bool Saturated,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<string> Unverified,
    double EvaporatedMilliliters,
    string? Chart,
    IReadOnlyList<Problem> Warnings,
    double LowerExplosivePercent,
    double UpperExplosivePercent,
    double MixingFactor)
{
    /// <summary>The same with the careful mixing factor of notices and plans; left out where a factor was said.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public CarefulAirJson? Careful { get; init; }

    /// <summary>The poison wording of what evaporates; left out where it wants none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? PoisonWording { get; init; }

    /// <summary>First aid where it can poison; left out where it cannot.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? FirstAid { get; init; }

    internal static AirAnswerJson Of(AirAssessment air, string? chart, Tell tell) => new(
        air.VaporVolume.CubicMeters,
        air.PeakPpm,
        air.FractionOfLel,
        air.FractionOfLimit,
        air.AirForLimit?.CubicMetersPerHour,
        air.AirForQuarterLel.CubicMetersPerHour,
        air.LimitPpm,
        air.LimitUnverified,
        AirWords.Limits(air),
        air.ClearAfter?.Minutes,
        air.HealthGoverns,
        air.Saturated,
        air.Doubts,
        air.Unverified,
        air.Question.Evaporated.Milliliters,
        chart is { Length: > 0 } ? chart : null,
        tell([.. AirCautions.Of(air)]),
        air.LowerExplosivePercent,
        air.UpperExplosivePercent,
        air.Question.MixingFactor);
}

/// <summary>Fresh air with the careful mixing factor.</summary>
internal sealed record CarefulAirJson(double MixingFactor, double? AirCubicMetersPerHourForLimit, double AirCubicMetersPerHourForQuarterLel)
{
    internal static CarefulAirJson Of(AirAssessment air) => new(air.Question.MixingFactor, air.AirForLimit?.CubicMetersPerHour, air.AirForQuarterLel.CubicMetersPerHour);
}
