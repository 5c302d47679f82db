namespace JarLabel.Store.Shops;

/// <summary>A place where jars stand.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Temperature">How warm it is there over the year, -20 to 40 °C: use-by estimates follow it.</param>
public sealed record Shelf(string Name, Temperature Temperature)
{
    /// <summary>How warm it was there before, the oldest first.</summary>
    public IReadOnlyList<EarlierWarmth> Earlier { get; init; } = [];

    /// <summary>From which day on it is known how warm it is there; null where that was not kept. Before it, it counts as it was then.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>How warm it is and was.</summary>
    public WarmthHistory Warmth => new(Temperature, Earlier);

    /// <summary>The shelf from a day on as warm as said, until the next change where one was said of a later day; what it was before and after is kept, so that the
    /// age of its jars stays right.</summary>
    public Shelf From(DateOnly day, Temperature now)
    {
        if (day < Since)
        {
            // What was said first stays as it was from its day on.
            return IsSame(Warmth.On(Since.Value), now) ? this with { Since = day } : this with { Since = day, Earlier = [new EarlierWarmth(Since.Value, now), .. Earlier] };
        }

        if (day == Since && Earlier.Count == 0)
        {
            return this with { Temperature = now };
        }

        var before = Warmth.On(day.AddDays(-1));
        EarlierWarmth[] kept = [.. Earlier.Where(e => e.Until < day), .. IsSame(before, now) ? (EarlierWarmth[])[] : [new EarlierWarmth(day, before)]];
        return Earlier.Where(e => e.Until > day).ToArray() is not [var last, .. var rest] ? this with { Temperature = now, Earlier = kept }
            : IsSame(now, rest is [var next, ..] ? next.Temperature : Temperature) ? this with { Earlier = [.. kept, .. rest] }
            : this with { Earlier = [.. kept, last with { Temperature = now }, .. rest] };
    }

    private static bool IsSame(Temperature one, Temperature other) => one.DegreesCelsius.Equals(other.DegreesCelsius);
}
