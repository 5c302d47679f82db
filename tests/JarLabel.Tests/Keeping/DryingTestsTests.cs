namespace JarLabel.Tests.Keeping;

public class DryingTestsTests
{
    [Fact]
    public void Passes_alone_mean_longer_than_the_last() => Assert.Equal(new LifeObservation(120, null), DryingTests.Life([Pass(30), Pass(120), Pass(60)]));

    [Fact]
    public void A_failure_after_a_pass_ends_the_life_between_them() => Assert.Equal(new LifeObservation(60, 90), DryingTests.Life([Pass(60), Fail(90)]));

    [Fact]
    public void A_first_test_that_fails_ends_the_life_before_it() => Assert.Equal(new LifeObservation(0, 90), DryingTests.Life([Fail(90)]));

    [Fact]
    public void A_pass_after_a_failure_counts_for_nothing_and_is_told()
    {
        DryingTest[] tests = [Pass(60), Fail(90), Pass(91)];
        Assert.Equal(new LifeObservation(60, 90), DryingTests.Life(tests));
        Assert.True(DryingTests.Contradict(tests));
        Assert.False(DryingTests.Contradict(tests[..2]));
    }

    /// <summary>Slow drops: at least half of the life is over. Drops like fresh: nine tenths are not over. What a jar really did comes before both.</summary>
    [Fact]
    public void An_ordered_outcome_says_more_than_pass_or_fail()
    {
        Assert.Equal(new LifeObservation(90, 180) { Expected = true }, DryingTests.Life([Slow(90), Pass(30)]));
        Assert.Equal(new LifeObservation(100, null), DryingTests.Life([Fresh(90), Pass(60)]));
        Assert.Equal(new LifeObservation(200, null), DryingTests.Life([Slow(90), Pass(200)]));
        Assert.Equal(new LifeObservation(90, 120), DryingTests.Life([Slow(90), Fail(120)]));
        Assert.Equal(new LifeObservation(90, 180), DryingTests.Life([Slow(90), Fail(190)]));
        Assert.Equal(new LifeObservation(90, 95), DryingTests.Life([Fresh(90), Fail(95)]));
        Assert.Equal(new LifeObservation(100, 120), DryingTests.Life([Fresh(90), Fail(120)]));
        Assert.Equal(new LifeObservation(0, 60), DryingTests.Life([Fail(60), Slow(90)]));
        Assert.False(DryingTests.Life([Slow(90)])!.Value.Ended);
    }

    [Fact]
    public void A_test_before_the_mixing_says_nothing() => Assert.Null(DryingTests.Life([Fail(-3), Pass(0)]));

    /// <summary>Ten degrees warmer is twice as old for a Q10 of 2, the convention of chemistry.</summary>
    [Theory, CommonPractice]
    [InlineData(20, 100)]
    [InlineData(30, 200)]
    [InlineData(10, 50)]
    public void Age_is_brought_to_twenty_degrees(double celsius, double aged) =>
        Assert.Equal(aged, At(celsius).AgedDays(Day(0), Day(100), 2), 1e-9);

    [Fact, CommonPractice]
    public void A_shelf_that_was_warmer_before_counts_as_warm_until_then()
    {
        var shelf = At(20) with { Earlier = [new(DateOnly.FromDateTime(Day(40)), Temperature.FromDegreesCelsius(30))] };
        Assert.Equal((2 * 40) + 60, shelf.AgedDays(Day(0), Day(100), 2), 1e-9);
        Assert.Equal((2 * 10) + 60, shelf.AgedDays(Day(30), Day(100), 2), 1e-9);
        Assert.Equal(20, shelf.AgedDays(Day(50), Day(70), 2), 1e-9);
        Assert.Equal(30, shelf.On(DateOnly.FromDateTime(Day(39))).DegreesCelsius, 1e-9);
        Assert.Equal(20, shelf.On(DateOnly.FromDateTime(Day(40))).DegreesCelsius, 1e-9);
    }

    [Fact]
    public void Parts_of_a_stay_add_up_to_the_whole() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 200], Gen.Int[0, 200], Gen.Double[5, 35], Gen.Double[5, 35]).Sample((a, b, change, before, now) =>
        {
            var shelf = At(now) with { Earlier = [new(DateOnly.FromDateTime(Day(change)), Temperature.FromDegreesCelsius(before))] };
            double Aged(int from, int to) => shelf.AgedDays(Day(from), Day(to), 2);
            return Math.Abs(Aged(0, a) + Aged(a, a + b) - Aged(0, a + b)) < 1e-9;
        });

    private static WarmthHistory At(double celsius) => new(Temperature.FromDegreesCelsius(celsius), []);

    private static DateTime Day(int day) => new DateTime(2026, 1, 1).AddDays(day);

    private static DryingTest Pass(double age) => new(age, true);

    private static DryingTest Slow(double age) => new(age, Drying.Slow);

    private static DryingTest Fresh(double age) => new(age, Drying.Fresh);

    private static DryingTest Fail(double age) => new(age, false);
}
