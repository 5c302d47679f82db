namespace JarLabel.Core.Keeping;

/// <summary>What old flakes cost a jar. Dry shellac ages too, and what it has lost in the bag is missing in the jar.</summary>
/// <remarks>The dry life is in the catalog; the shape of the loss is a convention on the careful side: none in the first half of the dry
/// life, half the jar's life at its end, a quarter at twice the dry life and later.</remarks>
public static class FlakeAge
{
    private const double LeastLeft = 0.25;

    /// <summary>What is left of a jar's life when a pinch of its flakes dissolved cloudy: as at the end of the dry life. A judgement on the careful side.</summary>
    public const double LeftWhenCloudy = 0.5;

    /// <summary>The part of the jar's life that is left, ¼ to 1. Age and a cloudy pinch show one loss, so the larger of the two counts and not both.</summary>
    public static double LifeLeft(DateOnly? flakeDate, DateOnly mixed, KeepingClass kind, bool cloudy)
    {
        var left = LifeLeft(flakeDate, mixed, kind);
        return cloudy ? Math.Min(left, LeftWhenCloudy) : left;
    }

    /// <summary>The part of the jar's life that is left, ¼ to 1; 1 when the age is not known.</summary>
    public static double LifeLeft(DateOnly? flakeDate, DateOnly mixed, KeepingClass kind) => DryLivesSpent(flakeDate, mixed, kind) switch
    {
        <= 0.5 => 1,
        <= 1 and var spent => 1.5 - spent,
        var spent => Math.Max(LeastLeft, 0.75 - (spent / 4)),
    };

    /// <summary>True when the flakes are older than their dry life, so that a small batch should be tried first.</summary>
    public static bool PastDryLife(DateOnly? flakeDate, DateOnly mixed, KeepingClass kind) => DryLivesSpent(flakeDate, mixed, kind) > 1;

    /// <summary>The last day on which flakes of this date cost a jar nothing.</summary>
    public static DateOnly FreshUntil(DateOnly flakeDate, KeepingClass kind) =>
        flakeDate.AddDays((int)(Months.AverageDays * (double)kind.FlakeMonths / 2));

    private static double DryLivesSpent(DateOnly? flakeDate, DateOnly mixed, KeepingClass kind)
    {
        return flakeDate is { } made
            ? (mixed.DayNumber - made.DayNumber) / (Months.AverageDays * (double)kind.FlakeMonths)
            : 0;
    }
}
