namespace JarLabel.Tests.Keeping;

/// <summary>How long a batch keeps that stood in several places: warmth weighs time, the longest promise is laid once, on time by the calendar.</summary>
public class LifeSpentTests
{
    private static readonly DateTime Made = new(2026, 3, 9, 10, 0, 0);

    private static readonly string[] Kinds = ["bleached", "blonde", "dewaxed", "waxy"];
    private static readonly double[] Lefts = [1, 0.7, 0.5, 0.25];

    /// <summary>Any shop: what it has settled of warmth, the flakes' months at 20 °C, what they have left, and where the jar stood for how many hours.</summary>
    private static readonly Gen<History> Histories = Gen.Select(
        Gen.OneOf(Gen.Const((double?)null), Gen.Double[1.5, 3].Select(q10 => (double?)q10)),
        Gen.Int[0, 3].Select(i => Kinds[i]),
        Gen.Int[0, 3].Select(i => Lefts[i]),
        Gen.Select(Gen.Int[0, 4000], Gen.Double[-5, 42], (hours, celsius) => new Part(hours, celsius)).Array[1, 6],
        (q10, kind, left, parts) => new History(q10, kind, left, parts));

    /// <summary>8 months at 20 °C. Three of them at 20 °C spend 3/8; what is left is 5/8 of 16 months at 10 °C, so that the calendar's twelve come first, and of 4
    /// months at 30 °C for a Q10 of 2: two and a half. Three months at 10 °C and then at 30 °C: 13/16 of 4 months.</summary>
    [Theory, CommonPractice]
    [InlineData("2026-11-09", 20)]
    [InlineData("2027-03-09", 20, "2026-06-09", 10)]
    [InlineData("2026-08-24", 20, "2026-06-09", 30)]
    [InlineData("2026-09-16", 10, "2026-06-09", 30)]
    [InlineData("2026-10-09", 20, "2026-06-09", 30, "2026-07-09", 20)]
    public void The_life_that_is_left_is_a_part_of_the_life_in_the_next_place(string useBy, double first, params object[] moves)
    {
        List<Part> parts = [new(0, first)];
        for (var i = 0; i < moves.Length; i += 2)
        {
            var hours = (DateTime.Parse((string)moves[i] + "T10:00", CultureInfo.InvariantCulture) - Made).TotalHours;
            parts[^1] = parts[^1] with { Hours = (int)hours - parts.Take(parts.Count - 1).Sum(p => p.Hours) };
            parts.Add(new(0, Convert.ToDouble(moves[i + 1], CultureInfo.InvariantCulture)));
        }

        Assert.Equal(DateOnly.Parse(useBy, CultureInfo.InvariantCulture), new History(2, "dewaxed", 1, [.. parts]).UseBy);
    }

    [Fact]
    public void A_warmer_stay_never_gives_a_later_date_than_a_cooler_one() => Gen.Select(Histories, Gen.Int[0, 5], Gen.Double[0, 30]).Sample((history, which, warmer) =>
    {
        var warm = history.With(which, part => part with { Celsius = part.Celsius + warmer });
        return warm.UseBy <= history.UseBy && warm.TestFrom <= history.TestFrom;
    });

    [Fact]
    public void A_stay_of_no_length_changes_nothing() => Gen.Select(Histories, Gen.Int[0, 6], Gen.Double[-5, 42]).Sample((history, place, celsius) =>
    {
        var at = place % history.Parts.Length;
        return history.Dates == (history with { Parts = [.. history.Parts[..at], new Part(0, celsius), .. history.Parts[at..]] }).Dates;
    });

    [Fact]
    public void A_stay_in_two_parts_is_one_stay() => Gen.Select(Histories, Gen.Int[0, 6], Gen.Double[0, 1]).Sample((history, place, share) =>
    {
        var at = place % history.Parts.Length;
        var (part, first) = (history.Parts[at], (int)(history.Parts[at].Hours * share));
        return history.Dates == (history with { Parts = [.. history.Parts[..at], part with { Hours = first }, part with { Hours = part.Hours - first }, .. history.Parts[(at + 1)..]] }).Dates;
    });

    [Fact]
    public void To_a_cooler_shelf_and_back_never_costs_and_no_date_is_later_than_the_calendar_allows() => Gen.Select(Histories, Gen.Int[0, 4000], Gen.Int[0, 4000], Gen.Double[0, 30]).Sample((history, stays, away, cooler) =>
    {
        var last = history.Parts[^1];
        var (stayed, moved) = (last with { Hours = stays }, last with { Celsius = last.Celsius - cooler, Hours = away });
        var there = history with { Parts = [.. history.Parts[..^1], stayed, moved] };
        var back = history with { Parts = [.. history.Parts[..^1], stayed, moved, last] };
        return there.UseBy >= history.UseBy && back.UseBy >= history.UseBy && back.UseBy <= there.UseBy && there.UseBy <= DateOnly.FromDateTime(Made).AddMonths(12) && there.TestFrom <= there.UseBy;
    });

    /// <summary>Wherever it stood before, a batch in one warmth keeps what a fresh one there does.</summary>
    [Fact]
    public void One_place_all_the_time_is_the_estimate_of_a_fresh_batch() => Histories.Sample(history =>
    {
        var one = history with { Left = 1, Parts = [.. history.Parts.Select(part => part with { Celsius = history.Parts[0].Celsius })] };
        var fresh = KeepingEstimate.Of(Made, one.Class, ShopCatalog.Ours.Forms.Find("flake")!, Warmth.Reference, Temperature.FromDegreesCelsius(one.Parts[0].Celsius), null, one.Settings);
        return one.Dates == (fresh.TestFrom, fresh.UseBy);
    });

    private readonly record struct Part(int Hours, double Celsius);

    private sealed record History(double? Q10, string Kind, double Left, Part[] Parts)
    {
        internal KeepingSettings Settings => new(Q10);

        internal KeepingClass Class => ShopCatalog.Ours.Keeping.Find(Kind)!;

        internal DateOnly UseBy => Life.UseBy;

        internal DateOnly TestFrom => Life.TestFrom;

        internal (DateOnly, DateOnly) Dates => (TestFrom, UseBy);

        internal History With(int which, Func<Part, Part> change) => this with { Parts = [.. Parts.Select((part, i) => i == which % Parts.Length ? change(part) : part)] };

        private LifeSpent Life => new(
            Made,
            [.. Parts.Select((part, i) => (Made.AddHours(Parts.Take(i).Sum(p => p.Hours)), Temperature.FromDegreesCelsius(part.Celsius)))],
            warmth => KeepingEstimate.OfClaims(Class, warmth, Settings),
            Left);

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Q10} {Kind} {Left}: {string.Join(", ", Parts)}");
    }
}
