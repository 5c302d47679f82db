namespace JarLabel.Core.Air;

/// <summary>Liquid that evaporates in a room.</summary>
public sealed record AirQuestion
{
    /// <summary>How badly air mixes in a shop with a window or a fan, of 1 to 10, where nobody says otherwise (ACGIH, Industrial Ventilation: 3 is a usual
    /// choice; from memory).</summary>
    public const double UsualMixingFactor = 3;

    private AirQuestion()
    {
    }

    /// <summary>Liquid that goes into the air, without the shellac.</summary>
    public Volume Evaporated { get; private init; }

    /// <summary>Air in the room.</summary>
    public Volume Room { get; private init; }

    /// <summary>How long the evaporating takes; null for all at once.</summary>
    public Duration? Over { get; private init; }

    /// <summary>Room volumes of fresh air per hour, 0 to 1000.</summary>
    public double ChangesPerHour { get; private init; }

    /// <summary>1 where air mixes perfectly, to 10 where it hardly does (ACGIH, Industrial Ventilation).</summary>
    public double MixingFactor { get; private init; }

    /// <summary>Of air and liquid.</summary>
    public Temperature Temperature { get; private init; }

    /// <summary>Fresh air that counts, in room volumes per hour.</summary>
    public double EffectiveChangesPerHour => ChangesPerHour / MixingFactor;

    /// <summary>A question that can be answered, or every fault in it.</summary>
    /// <param name="evaporated">Liquid that goes into the air.</param>
    /// <param name="room">Air in the room, at least 1 m³.</param>
    /// <param name="over">How long it takes; null for all at once.</param>
    /// <param name="changesPerHour">Room volumes of fresh air per hour.</param>
    /// <param name="mixingFactor">1 to 10.</param>
    /// <param name="temperature">Of air and liquid; 20 °C when null.</param>
    public static Result<AirQuestion> Of(
        Volume evaporated, Volume room, Duration? over = null, double changesPerHour = 0, double mixingFactor = 1, Temperature? temperature = null)
    {
        var faults = new List<Problem>();
        Refuse(room >= RoomText.Least, () => AirProblems.NoRoom(room.CubicMeters));
        Refuse(evaporated > Volume.Zero, () => AirProblems.NothingEvaporates(evaporated.Milliliters));
        Refuse(over is null || over > Duration.Zero, () => AirProblems.NoTime(over!.Value.Minutes));
        Refuse(changesPerHour is >= 0 and <= 1000, () => AirProblems.Changes(changesPerHour));
        Refuse(mixingFactor is >= 1 and <= 10, () => AirProblems.Mixing(mixingFactor));
        return faults.Count > 0 ? Result<AirQuestion>.Failed(faults) : new AirQuestion
        {
            Evaporated = evaporated,
            Room = room,
            Over = over,
            ChangesPerHour = changesPerHour,
            MixingFactor = mixingFactor,
            Temperature = temperature ?? Temperature.FromDegreesCelsius(20),
        };

        void Refuse(bool fine, Func<Problem> problem)
        {
            if (!fine)
            {
                faults.Add(problem());
            }
        }
    }
}
