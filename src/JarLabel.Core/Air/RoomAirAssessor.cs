namespace JarLabel.Core.Air;

/// <summary>Answers what evaporating an alcohol does to a room.</summary>
public static class RoomAirAssessor
{
    /// <summary>How much of the lower explosive limit fire rules work with.</summary>
    public const double WorkingFractionOfLel = 0.25;

    /// <summary>Where no time is given, the fresh air is reckoned as if it took this long.</summary>
    private static readonly Duration DefaultOver = Duration.FromHours(1);

    /// <summary>The answer for a solvent; where its composition is unknown, for the worst to breathe that it may be, with the worst fire.</summary>
    public static Result<AirAssessment> Assess(Solvent solvent, AirQuestion question, RuleSet rules)
    {
        return Worst(solvent.Compositions.Select(c => Assess(c, question, rules)).OfType<AirAssessment>()) is { } worst
            ? worst with
            {
                Doubts = [.. worst.Doubts, .. NotKnown(solvent)],
                Unverified = [.. UnverifiedFigures.Of(solvent), .. worst.Unverified],
            }
            : AirProblems.NothingVolatile(solvent.Id);
    }

    private static string[] NotKnown(Solvent solvent) => solvent.Compositions.Count == 1 ? []
        : solvent.CompositionKnown ? ["The data sheet gives ranges: breathing and fire are each answered for the worst that they allow."]
        : ["The composition is not known: breathing and fire are each answered for the worst it may be."];

    /// <summary>Of several liquids the one that is the worst to breathe, with the fire of the one that burns soonest; null when there is none.</summary>
    public static AirAssessment? Worst(IEnumerable<AirAssessment> answers)
    {
        AirAssessment[] all = [.. answers];
        return all.MaxBy(a => a.FractionOfLimit) is { } worst
            ? worst with
            {
                FractionOfLel = all.Max(a => a.FractionOfLel),
                LowerExplosivePercent = all.Min(a => a.LowerExplosivePercent),
                UpperExplosivePercent = all.Max(a => a.UpperExplosivePercent),
                AirForQuarterLel = all.MaxBy(a => a.AirForQuarterLel.CubicMetersPerHour)!.AirForQuarterLel,
            }
            : null;
    }

    /// <summary>The answer for a composition; null when nothing in it is known to evaporate.</summary>
    public static AirAssessment? Assess(Composition liquid, AirQuestion question, RuleSet rules)
    {
        var parts = Parts(liquid, question, rules);
        return parts.Length == 0 ? null : Answer(question, parts, Doubts(liquid, parts)) with { Unverified = Unverified(liquid, parts) };
    }

    private static VaporPart[] Parts(Composition liquid, AirQuestion question, RuleSet rules)
    {
        var mass = liquid.DensityAt(question.Temperature) * question.Evaporated;
        return
        [
            .. liquid.Ingredients
                .Where(i => IsVolatile(i.Substance))
                .Select(i => (i.Substance, Vapor: Vapor.Of(mass * ((double)i.Percent / 100), i.Substance, question.Temperature)))
                .Select(v => new VaporPart(v.Substance, v.Vapor, Peak(v.Substance, v.Vapor, question), GoverningLimit.Of(v.Substance, rules)))
                .OrderByDescending(p => p.Vapor),
        ];
    }

    private static bool IsVolatile(Substance substance) =>
        substance is { MolarMass: not null, VaporPressure: not null } && substance.Id != Substance.WaterId;

    private static double Peak(Substance substance, Volume vapor, AirQuestion question) =>
        Math.Min(UnlimitedPeak(vapor, question), Vapor.SaturatedPpm(substance, question.Temperature) ?? 1e6);

    private static double UnlimitedPeak(Volume vapor, AirQuestion question) => 1e6 * (question.Over is { } over
        ? RoomAir.FractionAfter(vapor / over, question.Room, question.EffectiveChangesPerHour, over)
        : vapor / question.Room);

    private static AirAssessment Answer(AirQuestion question, VaporPart[] parts, IReadOnlyList<string> doubts)
    {
        var over = question.Over ?? DefaultOver;
        var limited = parts.Where(p => p.Limit is not null).ToArray();
        var overLimits = MixedVapors.SumOverLimits(limited.Select(p => (p.PeakPpm, (double)p.Limit!.Ppm)));
        return new()
        {
            Question = question,
            Parts = parts,
            FractionOfLel = parts.Sum(p => p.PeakPpm / LelPpm(p)),
            LowerExplosivePercent = MixedVapors.LowerExplosiveLimit(Fractions(parts).Select(f => (f.Fraction, LelPpm(f.Part) / 1e4))),
            UpperExplosivePercent = MixedVapors.UpperExplosiveLimit(Fractions(parts).Select(f => (f.Fraction, (double)(f.Part.Substance.Uel?.Value ?? 100)))),
            FractionOfLimit = overLimits,
            LimitPpm = LimitOfMixture(parts, limited),
            AirForLimit = limited.Length == 0 ? null : Sum(limited, p => RoomAir.AirFor(p.Vapor / over, (double)p.Limit!.Ppm, question.MixingFactor)),
            AirForQuarterLel = Sum(parts, p => RoomAir.AirFor(p.Vapor / over, WorkingFractionOfLel * LelPpm(p), question.MixingFactor)),
            ClearAfter = RoomAir.TimeUntilLeft(question.EffectiveChangesPerHour, 1 / Math.Max(1, overLimits)),
            Saturated = parts.Any(p => p.PeakPpm < UnlimitedPeak(p.Vapor, question)),
            Doubts = doubts,
        };
    }

    /// <summary>Each vapour's fraction of all the vapour.</summary>
    private static IEnumerable<(double Fraction, VaporPart Part)> Fractions(VaporPart[] parts)
    {
        var all = parts.Sum(p => p.Vapor.CubicMeters);
        return parts.Select(p => (p.Vapor.CubicMeters / all, p));
    }

    /// <summary>The ppm of all vapours together at which the sum over the limits is 1.</summary>
    private static double? LimitOfMixture(VaporPart[] parts, VaporPart[] limited)
    {
        var all = parts.Sum(p => p.Vapor.CubicMeters);
        return limited.Length == 0 ? null : all / limited.Sum(p => p.Vapor.CubicMeters / (double)p.Limit!.Ppm);
    }

    /// <summary>A vapour whose limit is unknown is taken to burn from 1 %, which is lower than that of any common solvent.</summary>
    private static double LelPpm(VaporPart part) => 1e4 * (double)(part.Substance.Lel?.Value ?? 1);

    private static VolumeFlow Sum(IEnumerable<VaporPart> parts, Func<VaporPart, VolumeFlow> flow) =>
        VolumeFlow.FromCubicMetersPerHour(parts.Sum(p => flow(p).CubicMetersPerHour));

    private static IReadOnlyList<string> Unverified(Composition liquid, VaporPart[] parts) =>
    [
        .. UnverifiedFigures.OfWeight(liquid),
        .. parts.SelectMany(p => UnverifiedFigures.OfVapor(p.Substance)),
        .. parts.Where(p => p.Limit is not null).SelectMany(p => UnverifiedFigures.Of(p.Substance, p.Limit!)),
    ];

    private static IReadOnlyList<string> Doubts(Composition liquid, VaporPart[] parts) =>
    [
        .. parts.Where(p => p.Limit is null).Select(p => $"No exposure limit is known for {p.Substance.Name}; it is left out of that sum."),
        .. parts.Where(p => p.Limit is { Unverified: true }).Select(p => $"The limit for {p.Substance.Name}, {p.Limit!.Name}, was not looked up in its source."),
        .. liquid.Ingredients.Where(i => i.Substance.Undeclared).Select(i => $"{i.Percent:0.#} % of the liquid is undeclared and left out."),
    ];
}

/// <summary>Which of the published limits a room is reckoned by.</summary>
public static class GoverningLimit
{
    /// <summary>The lowest of the limits of the region the rules belong to and of those heeded everywhere; where there is none, the lowest of all. What
    /// endangers life at once is no limit to work by. Null when nobody has published one.</summary>
    public static ExposureLimit? Of(Substance substance, RuleSet rules)
    {
        var lasting = substance.ExposureLimits.Where(l => l.Kind != ExposureKind.Idlh).OrderBy(l => l.Ppm).ThenBy(l => l.Unverified).ToArray();
        return lasting.FirstOrDefault(l => l.OnlyUnder is null || l.OnlyUnder == rules) ?? lasting.FirstOrDefault();
    }
}

/// <summary>Several vapours at once.</summary>
public static class MixedVapors
{
    /// <summary>Vapours of like effect: the sum of each over its limit must not pass 1 (29 CFR 1910.1000(d)(2)).</summary>
    public static double SumOverLimits(IEnumerable<(double Ppm, double LimitPpm)> vapors) => vapors.Sum(v => v.Ppm / v.LimitPpm);

    /// <summary>The average over eight hours of changing exposure (29 CFR 1910.1000(d)(1)).</summary>
    public static double EightHourAverage(IEnumerable<(double Hours, double Ppm)> stretches) => stretches.Sum(s => s.Hours * s.Ppm) / 8;

    /// <summary>The lower explosive limit of mixed vapours, percent by volume: <c>1 / sum(yi / LELi)</c>, Le Chatelier's rule.</summary>
    /// <param name="vapors">Each vapour's fraction of all the vapour, and its own limit, percent.</param>
    public static double LowerExplosiveLimit(IEnumerable<(double Fraction, double LelPercent)> vapors) => Mixed(vapors);

    /// <summary>The upper explosive limit of mixed vapours, percent by volume, by the same rule.</summary>
    /// <param name="vapors">Each vapour's fraction of all the vapour, and its own limit, percent.</param>
    public static double UpperExplosiveLimit(IEnumerable<(double Fraction, double UelPercent)> vapors) => Mixed(vapors);

    private static double Mixed(IEnumerable<(double Fraction, double Percent)> vapors) => 1 / vapors.Sum(v => v.Fraction / v.Percent);
}

/// <summary>One substance in the air of a room.</summary>
/// <param name="Substance">What it is.</param>
/// <param name="Vapor">All the vapour it gives.</param>
/// <param name="PeakPpm">The most of it in the air.</param>
/// <param name="Limit">The exposure limit it is held against; null when nobody has published one.</param>
public sealed record VaporPart(Substance Substance, Volume Vapor, double PeakPpm, ExposureLimit? Limit);
