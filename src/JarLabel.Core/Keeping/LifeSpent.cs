namespace JarLabel.Core.Keeping;

/// <summary>When a batch's life is spent. Each stay spends such a part of it as it is long beside a whole life in that warmth, so that a life of which a half
/// went by in the cool has a half left for the warm. Nothing given back, nothing lost: where a stay begins and ends changes nothing but its warmth.</summary>
/// <param name="made">When it was mixed.</param>
/// <param name="stays">How warm it was from each moment on, in order; the last lasts.</param>
/// <param name="months">A whole life in some warmth, in months; warmer is never longer.</param>
/// <param name="left">The part of it that the flakes have left, above 0 and at most 1.</param>
public sealed class LifeSpent(DateTime made, IReadOnlyList<(DateTime From, Temperature Warmth)> stays, Func<Temperature, double> months, double left)
{
    private const double TestedFrom = 0.5;

    /// <summary>From this day a few drops are tried first: half of the life is spent.</summary>
    public DateOnly TestFrom => On(TestedFrom);

    /// <summary>Expected to dry hard until this day: all of it is spent.</summary>
    public DateOnly UseBy => On(1);

    /// <summary>The day on which such a part of it is spent. The longest that is ever promised is counted by the calendar from the mixing, wherever it stood.</summary>
    private DateOnly On(double part) => Months.After(DateOnly.FromDateTime(made), Math.Min(KeepingEstimate.LongestMonths * left * part, Age(part)));

    /// <summary>The age in months at which such a part of it is spent.</summary>
    private double Age(double part)
    {
        var (spent, since) = (0.0, 0.0);
        for (var i = 0; ; i++)
        {
            var life = months(stays[i].Warmth) * left;
            var until = i + 1 < stays.Count ? Months.Between(made, stays[i + 1].From) : double.PositiveInfinity;
            var then = spent + ((until - since) / life);
            if (then >= part)
            {
                return since + ((part - spent) * life);
            }

            (spent, since) = (then, until);
        }
    }
}
