namespace JarLabel.Core.Labels;

/// <summary>How figures about air are written: no finer than the sums are good for.</summary>
public static class AirWords
{
    /// <summary>An airflow in both measures.</summary>
    public static string Flow(VolumeFlow air) => $"{Three(air.CubicMetersPerHour)} m³/h ({Three(air.CubicFeetPerMinute)} cfm)";

    /// <summary>An airflow in one measure, where there is room for no more.</summary>
    public static string Flow(VolumeFlow air, bool metric) => metric ? $"{Three(air.CubicMetersPerHour)} m³/h" : $"{Three(air.CubicFeetPerMinute)} cfm";

    /// <summary>Three figures that count: the sum is no better.</summary>
    public static string Three(double figure)
    {
        var step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(Math.Max(1, figure))) - 2));
        return Say($"{Math.Round(figure / step) * step:0}");
    }

    /// <summary>A stretch of time: minutes below two hours, then hours, from two days on days.</summary>
    public static string Time(Duration time) =>
        time.Hours < 2 ? Say($"{time.Minutes:0} min")
        : time.Days < 2 ? Say($"{time.Hours:0.#} h")
        : Say($"{time.Days:0.#} days");

    /// <summary>That the air can burn, or comes nearer to it than fire rules work with; null below that.</summary>
    public static string? Fire(AirAssessment air)
    {
        var share = Say($"{100 * air.FractionOfLel:0.#} %");
        return air switch
        {
            { CanBurn: true } => $"THE AIR CAN BURN: {share} of the lower explosive limit{Closed(air)}; one spark is enough. Evaporate less, or air far more.",
            { PassesWorkingLel: true } => $"Too near to fire: {share} of the lower explosive limit{Closed(air)}; fire rules keep under 25 %. Evaporate less, or air more.",
            _ => null,
        };
    }

    /// <summary>That the air holds more than may be breathed, and what to do; null within the limit.</summary>
    public static string? Breathing(AirAssessment air) => air is { PassesLimit: true, LimitPpm: { } limit }
        ? $"TOO MUCH TO BREATHE: {Times(air.FractionOfLimit)} the exposure limit of {Say($"{limit:0}")} ppm{Closed(air)}. Let in more fresh air, let less evaporate at once, or work out of doors. "
            + $"Where that is not enough, wear the breathing protection that section 8 of the safety data sheet names; a dust mask holds back no vapour{(air.Parts.Any(part => part.Substance.Id == Substance.MethanolId) ? ", a cartridge mask does not hold methanol" : "")}."
        : null;

    /// <summary>How many times a limit.</summary>
    public static string Times(double fraction) => fraction.ToString(fraction < 10 ? "0.0" : "0", CultureInfo.InvariantCulture) + " times";

    /// <summary>How the fresh air is reckoned, in a few words.</summary>
    public static string Mixing(double factor) => Say($"mixing factor {factor:0.##}, of 1 where air mixes perfectly to 10 where it hardly does");

    /// <summary>That air seldom mixes as well as a sum has it.</summary>
    public static string Careful { get; } = Say($"mixing factor {AirQuestion.UsualMixingFactor:0}: air seldom mixes perfectly");

    private static string Closed(AirAssessment air) => air.Question.ChangesPerHour > 0 ? "" : ", the room closed";

    /// <summary>Between which shares of vapour the air can burn.</summary>
    public static string Burns(AirAssessment air) =>
        Say($"{air.LowerExplosivePercent:0.#} to {air.UpperExplosivePercent:0.#} % of vapour in the air");

    /// <summary>The same in a word or two, to stand behind the figure; empty below that.</summary>
    public static string FireMark(AirAssessment air)
    {
        return air switch
        {
            { CanBurn: true } => ": CAN BURN",
            { PassesWorkingLel: true } => ": too much",
            _ => "",
        };
    }

    /// <summary>Which limit asks for more fresh air, in one sentence that a maker can act on.</summary>
    public static string Governs(AirAssessment air)
    {
        return air switch
        {
            { AirForLimit: null } => "No exposure limit is known for this vapour, so health cannot be judged: fire is what is left to go by.",
            { HealthGoverns: true, PassesWorkingLel: true } => $"Fire and health both: take the fresh air that health asks for, {Three(air.AirForLimit.Value / air.AirForQuarterLel)} times what fire asks for.",
            { HealthGoverns: true } => $"Health governs, long before fire: keeping to the exposure limit takes {Three(air.AirForLimit.Value / air.AirForQuarterLel)} times the fresh air that fire asks for.",
            _ => "Fire governs: staying under 25 % of the lower explosive limit takes more fresh air than breathing does.",
        };
    }

    /// <summary>The exposure limits the air is held against, the lowest of those listed for each vapour, such as <c>ethanol: OSHA PEL, 1000 ppm</c>.</summary>
    public static IReadOnlyList<string> Limits(AirAssessment air) =>
        [.. air.Parts.Where(p => p.Limit is not null).Select(p => Say($"{p.Substance.Name}: {p.Limit!.Name}, {p.Limit.Ppm:0.###} ppm"))];

    /// <summary>Whose limits they are, each once, where there is room for no more.</summary>
    public static string LimitNames(AirAssessment air) =>
        string.Join(", ", air.Parts.Select(p => p.Limit?.Name).OfType<string>().Distinct());

    /// <summary>What half a square metre of open window does for this room, with the careful wind of <see cref="Draught"/>.</summary>
    public static string Window(AirAssessment air)
    {
        var draught = Draught.ThroughSmallWindow;
        var wanted = Wanted(air);
        var changes = Say($"{Draught.ChangesPerHour(draught, air.Question.Room):0.#}");
        return $"½ m² open, another across, faint breeze: ≈ {Flow(draught)}, {changes} air changes an hour; "
            + (wanted <= draught ? "enough, while the breeze lasts" : $"not enough, {Three(Math.Max(2, Math.Ceiling(wanted / draught)))} such windows or a fan");
    }

    /// <summary>What a fan has to move.</summary>
    public static string Fan(AirAssessment air)
    {
        return $"must really move {Flow(Wanted(air))} outdoors, with a way in across the room; one that cannot spark";
    }

    /// <summary>The fresh air of the limit that governs.</summary>
    private static VolumeFlow Wanted(AirAssessment air) => air.HealthGoverns ? air.AirForLimit!.Value : air.AirForQuarterLel;

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
