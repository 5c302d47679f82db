namespace JarLabel.Tests.Keeping;

public class KeepingEstimateTests
{
    private static readonly DateTime Mixed = new(2026, 3, 9, 10, 0, 0);
    private static readonly LacForm Flakes = ShopCatalog.Ours.Forms.Find("flake")!;

    [Theory, CommonPractice]
    [InlineData("bleached", "2026-06-09")]
    [InlineData("blonde", "2026-09-09")]
    [InlineData("garnet", "2026-11-09")]
    [InlineData("orange-dewaxed", "2026-11-09")]
    [InlineData("orange", "2027-03-09")]
    [InlineData("seedlac", "2027-03-09")]
    public void At_twenty_degrees_a_grade_keeps_its_base_months(string grade, string useBy) =>
        Assert.Equal(DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture), Estimate(grade, 20).UseBy);

    [Fact]
    public void A_garnet_is_tested_from_half_its_life_and_ready_after_a_day()
    {
        var dates = Estimate("garnet", 20);
        Assert.Equal(new DateOnly(2026, 7, 9), dates.TestFrom);
        Assert.Equal(new DateTime(2026, 3, 10, 10, 0, 0), dates.Ready);
    }

    [Theory, CommonPractice]
    [InlineData("garnet", 30, "2026-07-09")]
    [InlineData("bleached", 10, "2026-09-09")]
    [InlineData("bleached", 30, "2026-04-24")]
    public void Where_a_shop_settled_on_two_ten_degrees_double_or_halve_the_life(string grade, double celsius, string useBy) =>
        Assert.Equal(DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture), Estimate(grade, celsius, settings: new KeepingSettings(2)).UseBy);

    /// <summary>Eight months and three, over the square root of 1.7 x 3.1, are 3.485 and 1.307; a cool shelf only doubles.</summary>
    [Theory]
    [InlineData("garnet", 30, "2026-06-23")]
    [InlineData("bleached", 10, "2026-09-09")]
    [InlineData("bleached", 30, "2026-04-18")]
    public void Where_nobody_settled_it_a_warm_shelf_takes_more_and_a_cool_one_gives_no_more(string grade, double celsius, string useBy) =>
        Assert.Equal(DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture), Estimate(grade, celsius).UseBy);

    [Theory, CommonPractice]
    [InlineData("orange", 5)]
    [InlineData("garnet", 10)]
    public void However_cool_the_shelf_no_estimate_outlasts_the_longest_published_claim_of_a_year(string grade, double celsius) =>
        Assert.Equal(new DateOnly(2027, 3, 9), Estimate(grade, celsius).UseBy);

    [Fact]
    public void A_cool_room_dissolves_slower() =>
        Assert.Equal(Mixed.AddHours(48), KeepingEstimate.Ready(Mixed, Flakes, Temperature.FromDegreesCelsius(10), KeepingSettings.Usual));

    [Theory]
    [InlineData("2025-03-09", "2026-11-09")]
    [InlineData("2023-03-10", "2026-07-09")]
    [InlineData("2010-01-01", "2026-05-09")]
    public void Old_flakes_shorten_the_life(string flakeDate, string useBy)
    {
        var made = DateOnly.Parse(flakeDate, System.Globalization.CultureInfo.InvariantCulture);
        var expected = DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(Estimate("garnet", 20, made).UseBy.DayNumber - expected.DayNumber, -1, 1);
    }

    [Fact]
    public void A_warmer_shelf_or_older_flakes_never_lengthen_the_life() =>
        Gen.Select(Gen.Double[-10, 40], Gen.Double[0, 20], Gen.Int[0, 5000], Gen.Int[0, 2000]).Sample((celsius, warmer, age, older) =>
        {
            var made = DateOnly.FromDateTime(Mixed).AddDays(-age);
            var before = Estimate("garnet", celsius, made).UseBy;
            return Estimate("garnet", celsius + warmer, made).UseBy <= before && Estimate("garnet", celsius, made.AddDays(-older)).UseBy <= before;
        });

    [Theory]
    [InlineData("2026-03-09T11:00", JarState.Dissolving)]
    [InlineData("2026-03-10T10:00", JarState.Good)]
    [InlineData("2026-07-09T08:00", JarState.Test)]
    [InlineData("2026-11-09T23:00", JarState.Test)]
    [InlineData("2026-11-10T00:00", JarState.Past)]
    public void A_jar_passes_through_its_states(string moment, JarState state) =>
        Assert.Equal(state, Estimate("garnet", 20).StateAt(DateTime.Parse(moment, System.Globalization.CultureInfo.InvariantCulture)));

    private static KeepingDates Estimate(string grade, double celsius, DateOnly? flakeDate = null, KeepingSettings? settings = null)
    {
        var catalog = ShopCatalog.Ours;
        return KeepingEstimate.Of(
            Mixed,
            catalog.Keeping.Find(catalog.Grades.Find(grade)!.Keeping)!,
            Flakes,
            Temperature.FromDegreesCelsius(20),
            Temperature.FromDegreesCelsius(celsius),
            flakeDate,
            settings ?? KeepingSettings.Usual);
    }
}
