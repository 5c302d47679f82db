namespace JarLabel.Tests.Store;

public class ShelfTests
{
    private static readonly DateOnly Day = new(2026, 6, 1);

    [Fact]
    public void What_is_put_right_on_the_same_day_or_said_of_an_earlier_one_leaves_what_was_before()
    {
        var shelf = Of(20).From(Day, Degrees(30));
        Assert.Equal([20, 30], Seen(shelf));
        Assert.Equal([20, 25], Seen(shelf.From(Day, Degrees(25))));
        Assert.Empty(shelf.From(Day, Degrees(20)).Earlier);
        var since = shelf.From(Day.AddDays(-10), Degrees(30));
        Assert.Single(since.Earlier);
        Assert.Equal((20, 30), (since.Warmth.On(Day.AddDays(-11)).DegreesCelsius, since.Warmth.On(Day.AddDays(-10)).DegreesCelsius));
    }

    /// <summary>Whatever is said, in whatever order: the warmth from the day on, until the next change that was said before, is what is said, and all else stays.</summary>
    [Fact]
    public void Only_what_comes_after_the_day_and_before_the_next_change_is_as_it_is_said() => Gen.Select(Gen.Select(Gen.Int[0, 60], Gen.Int[5, 35]).Array[0, 6], Gen.Int[0, 60], Gen.Int[5, 35]).Sample((said, day, celsius) =>
    {
        var before = said.Aggregate(Of(20), (shelf, one) => shelf.From(Day.AddDays(one.Item1), Degrees(one.Item2)));
        var after = before.From(Day.AddDays(day), Degrees(celsius));
        var next = before.Earlier.Select(e => e.Until.DayNumber - Day.DayNumber).Where(change => change > day).DefaultIfEmpty(1000).Min();
        return Enumerable.Range(-5, 80).All(i => after.Warmth.On(Day.AddDays(i)).Equals(i < day || i >= next ? before.Warmth.On(Day.AddDays(i)) : Degrees(celsius), Temperature.FromDegreesCelsius(1e-6)))
            && after.Earlier.Zip(after.Earlier.Skip(1)).All(pair => pair.First.Until < pair.Second.Until);
    });

    private static double[] Seen(Shelf shelf) => [shelf.Warmth.On(Day.AddDays(-1)).DegreesCelsius, shelf.Warmth.On(Day).DegreesCelsius];

    private static Shelf Of(double celsius) => new("main", Degrees(celsius));

    private static Temperature Degrees(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
