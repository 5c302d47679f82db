namespace JarLabel.Core.Air;

/// <summary>What evaporating a liquid does to a room's air, and how much fresh air it takes.</summary>
public sealed record AirAssessment
{
    /// <summary>What was asked.</summary>
    public required AirQuestion Question { get; init; }

    /// <summary>Each vapour, the most of it first. Water vapour is left out.</summary>
    public required IReadOnlyList<VaporPart> Parts { get; init; }

    /// <summary>All the vapour.</summary>
    public Volume VaporVolume => Volume.FromCubicMeters(Parts.Sum(p => p.Vapor.CubicMeters));

    /// <summary>The most in the air, ppm by volume.</summary>
    public double PeakPpm => Parts.Sum(p => p.PeakPpm);

    /// <summary>The peak as a fraction of the lower explosive limit, by Le Chatelier's rule; fire is possible from 1.</summary>
    public required double FractionOfLel { get; init; }

    /// <summary>From how much vapour the air can burn, percent by volume, by Le Chatelier's rule.</summary>
    public required double LowerExplosivePercent { get; init; }

    /// <summary>Up to how much vapour the air can burn, percent by volume, by the same rule. Richer air burns as soon as fresh air comes to it.</summary>
    public required double UpperExplosivePercent { get; init; }

    /// <summary>The peak against the exposure limits: 1 is the limit, more is too much.</summary>
    public required double FractionOfLimit { get; init; }

    /// <summary>The exposure limit of this vapour mixture, ppm; null when no part has one.</summary>
    public required double? LimitPpm { get; init; }

    /// <summary>True when a limit that went into <see cref="LimitPpm"/> was not looked up in its source.</summary>
    public bool LimitUnverified => Parts.Any(p => p.Limit is { Unverified: true });

    /// <summary>The figures it stands on that nobody has looked up in their source.</summary>
    public IReadOnlyList<string> Unverified { get; init; } = [];

    /// <summary>Fresh air that keeps the room at the exposure limit while it evaporates; null when there is no limit.</summary>
    public required VolumeFlow? AirForLimit { get; init; }

    /// <summary>Fresh air that keeps the room at a quarter of the lower explosive limit.</summary>
    public required VolumeFlow AirForQuarterLel { get; init; }

    /// <summary>How long after the evaporating ends until the air is at the exposure limit; null when no fresh air comes in.</summary>
    public required Duration? ClearAfter { get; init; }

    /// <summary>True when the air can hold no more: the rest stays liquid.</summary>
    public required bool Saturated { get; init; }

    /// <summary>True when breathing asks for more air than fire does, as it nearly always does.</summary>
    public bool HealthGoverns => AirForLimit is { } health && health > AirForQuarterLel;

    /// <summary>True when the air holds more vapour than fire rules work with, as the figure is told: from 25 % of the lower explosive limit on.</summary>
    public bool PassesWorkingLel => FractionOfLel >= RoomAirAssessor.WorkingFractionOfLel - LastFigure;

    /// <summary>True when the air itself can catch fire: from the lower explosive limit on.</summary>
    public bool CanBurn => FractionOfLel >= 1 - LastFigure;

    /// <summary>True when there is more in the air than may be breathed over a shift.</summary>
    public bool PassesLimit => FractionOfLimit > 1 + 1e-9;

    /// <summary>What is told as 25.0 % counts as 25 %.</summary>
    private const double LastFigure = 0.0005;

    /// <summary>What is not known, in whole sentences.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }
}
