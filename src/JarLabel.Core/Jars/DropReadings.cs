namespace JarLabel.Core.Jars;

/// <summary>What a bench reads of drops that dry. Minutes alone say little, as film, warmth and damp air change them; beside a fresh batch on the same glass
/// they say how old the jar is.</summary>
public sealed record DropReadings
{
    /// <summary>Drops that take so many times as long as fresh ones are slow. A judgement.</summary>
    public const double SlowTimes = 1.5;

    /// <summary>Minutes until a finger no longer sticks.</summary>
    public int? TackFreeMinutes { get; init; }

    /// <summary>Minutes until cloth pressed on it leaves no print.</summary>
    public int? PrintFreeMinutes { get; init; }

    /// <summary>The same of a fresh batch beside it, minutes until tack-free</summary>
    public int? FreshTackFreeMinutes { get; init; }

    /// <summary>and until print-free.</summary>
    public int? FreshPrintFreeMinutes { get; init; }

    /// <summary>How warm it was at the bench, stored in °C.</summary>
    [JsonPropertyName("celsius")]
    public Temperature? Temperature { get; init; }

    /// <summary>How damp the air was, % of saturation.</summary>
    public int? HumidityPercent { get; init; }

    /// <summary>What they were put on and how thick: <c>glass, 1 coat</c>.</summary>
    public string? Film { get; init; }

    /// <summary>How many times as long as the fresh batch it took, by the slower of the two readings; null where none is held against another.</summary>
    [JsonIgnore]
    public double? TimesFresh => ((double?[])[Times(TackFreeMinutes, FreshTackFreeMinutes), Times(PrintFreeMinutes, FreshPrintFreeMinutes)]).Max();

    /// <summary>How drops that dried hard did so, by what was read; null where nothing was held against them.</summary>
    [JsonIgnore]
    public Drying? Dried => TimesFresh switch
    {
        null => null,
        >= SlowTimes => Drying.Slow,
        _ => Drying.Fresh,
    };

    /// <summary>True when nothing was read.</summary>
    [JsonIgnore]
    public bool IsEmpty => this == new DropReadings();

    /// <summary>The test, unless what was said and what was read contradict each other.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="said">How the drops dried, as somebody said.</param>
    /// <param name="dryMinutes">How long that took.</param>
    public Result<Tested> Test(DateTime at, Drying said, int? dryMinutes)
    {
        Problem[] problems = [.. Faults(said, dryMinutes)];
        var dried = said is Drying.Hard ? Dried ?? said : said;
        return problems.Length > 0
            ? Result<Tested>.Failed(problems)
            : new Tested(at, said != Drying.Soft, dryMinutes)
            {
                Dried = dried is Drying.Slow or Drying.Fresh ? dried : null,
                Readings = IsEmpty ? null : this,
            };
    }

    private IEnumerable<Problem> Faults(Drying said, int? dryMinutes)
    {
        if (dryMinutes < TackFreeMinutes)
        {
            yield return JarProblems.DryBeforeTackFree(dryMinutes.Value, TackFreeMinutes.Value, "dry-minutes");
        }

        if (PrintFreeMinutes < TackFreeMinutes)
        {
            yield return JarProblems.PrintFreeBeforeTackFree(PrintFreeMinutes.Value, TackFreeMinutes.Value, "print-free");
        }

        if (FreshPrintFreeMinutes < FreshTackFreeMinutes)
        {
            yield return JarProblems.PrintFreeBeforeTackFree(FreshPrintFreeMinutes.Value, FreshTackFreeMinutes.Value, "fresh-print-free");
        }

        if (said != Drying.Soft && FreshTackFreeMinutes is not null && TackFreeMinutes is null)
        {
            yield return JarProblems.NothingBesideFresh("fresh-tack-free", "tack-free");
        }

        if (said != Drying.Soft && FreshPrintFreeMinutes is not null && PrintFreeMinutes is null)
        {
            yield return JarProblems.NothingBesideFresh("fresh-print-free", "print-free");
        }

        if (said == Drying.Fresh && Dried == Drying.Slow)
        {
            yield return JarProblems.NotLikeFresh(TimesFresh!.Value);
        }
    }

    private static double? Times(int? minutes, int? fresh) => minutes is { } own && fresh is { } other ? (double)own / other : null;
}
