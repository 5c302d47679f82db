namespace JarLabel.Tests.Jars;

/// <summary>Where what is in a jar comes from, through every jar it was poured from.</summary>
public class JarOriginsTests
{
    private static readonly KeepingDates Dates = new(Day(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));
    private static readonly Contents Liquid = new([new("garnet", Mass.FromGrams(60))], [new("ethanol-95", Volume.FromMilliliters(350), Mass.FromGrams(284))]);

    private readonly Dictionary<int, List<JarEvent>> jars = [];

    [Fact]
    public void A_batch_keeps_its_beginning_and_every_shelf_through_all_its_jars()
    {
        Lives(1, Mixed(0, "main"), new Moved(Day(30), "attic"), Out(60, 2), new Moved(Day(90), "cellar"));
        Lives(2, Decanted(60, 1, "attic"), new Moved(Day(70), "main"), Out(80, 3));
        Lives(3, Decanted(80, 2, "cellar"));
        var batch = Assert.Single(Of(3)!);
        Assert.Equal((JarNumber.From(1), Day(0)), (batch.Mother, batch.Since));
        Assert.Equal([new Stay(Day(0), "main"), new(Day(30), "attic"), new(Day(70), "main"), new(Day(80), "cellar")], batch.Stays);
        var own = Assert.Single(Of(1)!);
        Assert.Equal("cellar", own.Stays[^1].Shelf);
    }

    [Fact]
    public void Fresh_flakes_begin_a_life_of_their_own_and_a_blend_has_all_of_its_parts()
    {
        Lives(1, Mixed(0, "main"), new Thickened(Day(20), new ResinPart("blonde", Mass.FromGrams(10)), Dates), Out(50, 3));
        Lives(2, Mixed(40, "main"), Out(50, 3));
        Lives(3, Blended(50, 1, 2));
        Assert.Equal([(1, Day(0)), (1, Day(20)), (2, Day(40))], Of(3)!.Select(b => (b.Mother.Value, b.Since)));
    }

    [Fact]
    public void Parts_of_one_batch_that_stood_together_are_one_batch_again()
    {
        Lives(1, Mixed(0, "main"), Out(10, 2), Out(10, 3));
        Lives(2, Decanted(10, 1, "main"), Out(30, 4));
        Lives(3, Decanted(10, 1, "main"), Out(30, 4));
        Lives(4, Blended(30, 2, 3));
        Assert.Equal(1, Assert.Single(Of(4)!).Mother.Value);
    }

    [Fact]
    public void What_cannot_be_followed_is_not_guessed()
    {
        Lives(5, Decanted(10, 4, "main"));
        Assert.Null(Of(5)); // there is no jar 4
        Lives(6, Decanted(10, 7, "main"));
        Lives(7, Decanted(10, 6, "main"));
        Assert.Null(Of(6)); // each from the other
        Lives(10, Mixed(0, "main"));
        for (var i = 11; i < 1000; i++)
        {
            Lives(i, Decanted(i, i - 1, "main"));
        }

        Assert.Null(Of(999));
        Assert.NotNull(Of(100));
    }

    private IReadOnlyList<KeptBatch>? Of(int jar) => new JarOrigins(Life).Of(Life(JarNumber.From(jar))!);

    private JarLife? Life(JarNumber number) => jars.TryGetValue(number.Value, out var events) ? JarLife.Of(number, events).Require() : null;

    private void Lives(int jar, params IEnumerable<JarEvent> events) => jars[jar] = [.. events];

    private static DateTime Day(int day) => new DateTime(2026, 3, 9, 10, 0, 0).AddDays(day);

    private static Mixed Mixed(int day, string shelf) => new(Day(day), Liquid, new(ContainerMaterial.Glass), Dates, shelf, Temperature.FromDegreesCelsius(20));

    private static PouredOut Out(int day, int to) => new(Day(day), Liquid.Share(0.1), JarNumber.From(to));

    private static Decanted Decanted(int day, int from, string shelf) => new(Day(day), Liquid, new(ContainerMaterial.Glass), Dates, shelf, Day(0), JarNumber.From(from));

    private static Blended Blended(int day, params int[] from) =>
        new(Day(day), Liquid, new(ContainerMaterial.Glass), Dates, "main", Day(0), [.. from.Select(JarNumber.From)]);
}
