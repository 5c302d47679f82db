namespace JarLabel.Tests.Jars;

/// <summary>What a bench reads of drops that dry, and what it makes of it.</summary>
public class DropReadingsTests
{
    private static readonly DateTime Day = new(2026, 6, 1, 10, 0, 0);

    [Theory]
    [InlineData(29, 20, null, null, Drying.Fresh)]
    [InlineData(30, 20, null, null, Drying.Slow)]
    [InlineData(20, 20, 60, 40, Drying.Slow)]
    [InlineData(20, 20, 59, 40, Drying.Fresh)]
    [InlineData(90, null, 200, null, Drying.Hard)]
    public void A_pass_is_what_the_minutes_beside_a_fresh_batch_make_of_it(int? tack, int? freshTack, int? print, int? freshPrint, Drying dried)
    {
        var test = Read(tack, freshTack, print, freshPrint).Test(Day, Drying.Hard, null).Require();
        Assert.Equal((true, dried), (test.Passed, test.HowDried));
    }

    [Fact]
    public void What_somebody_said_counts_where_no_minutes_contradict()
    {
        Assert.Equal(Drying.Fresh, new DropReadings().Test(Day, Drying.Fresh, null).Require().HowDried);
        Assert.Equal(Drying.Slow, Read(20, 20, null, null).Test(Day, Drying.Slow, null).Require().HowDried);
        var soft = Read(20, 20, null, null).Test(Day, Drying.Soft, null).Require();
        Assert.Equal((false, Drying.Soft), (soft.Passed, soft.HowDried));
        Assert.Equal("JL392", Assert.Single(Read(40, 20, null, null).Test(Day, Drying.Fresh, null).Problems).Code);
    }

    /// <summary>Soft drops are never tack-free: then the fresh batch's minutes stand alone.</summary>
    [Fact, Cites(References.AstmD1640, "a film is tack-free before it is print-free")]
    public void Readings_that_cannot_be_are_told_together()
    {
        Assert.Equal(["JL390", "JL390"], Read(30, 20, 29, 19).Test(Day, Drying.Hard, null).Problems.Select(p => p.Code));
        Assert.Equal("JL390", Assert.Single(Read(30, null, null, null).Test(Day, Drying.Hard, 29).Problems).Code);
        Assert.Equal("JL390", Assert.Single(Read(30, null, null, null).Test(Day, Drying.Soft, 29).Problems).Code);
        Assert.Empty(Read(30, null, 60, null).Test(Day, Drying.Hard, 30).Problems);
        Assert.Equal(["JL391", "JL391"], Read(null, 20, null, 40).Test(Day, Drying.Hard, null).Problems.Select(p => p.Code));
        Assert.Empty(Read(null, 20, null, 40).Test(Day, Drying.Soft, null).Problems);
        Assert.Empty(Read(30, 20, 30, 20).Test(Day, Drying.Hard, null).Problems);
    }

    [Fact]
    public void A_test_is_kept_as_it_was_read_and_an_old_one_as_it_was_written()
    {
        const string old = """{"event":"Tested","passed":true,"dryMinutes":40,"at":"2026-06-01T10:00:00"}""";
        var read = Assert.IsType<Tested>(JarEventJson.Read(old, "event 1").Require());
        Assert.Equal((Drying.Hard, null, null), (read.HowDried, read.Dried, read.Readings));
        Assert.Equal(old, JarEventJson.Write(read));

        var full = (Read(30, 20, 60, 40) with { Temperature = Temperature.FromDegreesCelsius(21.5), HumidityPercent = 55, Film = "glass, 1 coat" }).Test(Day, Drying.Hard, 50).Require();
        var line = JarEventJson.Write(full);
        Assert.Equal(
            """{"event":"Tested","passed":true,"dryMinutes":50,"dried":"Slow","readings":{"tackFreeMinutes":30,"printFreeMinutes":60,"freshTackFreeMinutes":20,"freshPrintFreeMinutes":40,"celsius":21.5,"humidityPercent":55,"film":"glass, 1 coat"},"at":"2026-06-01T10:00:00"}""",
            line);
        Assert.Equal(full, JarEventJson.Read(line, "event 1").Require());
        Assert.Equal(
            "test passed, slow but hard, dry after 50 min, tack-free after 30 min (fresh 20), print-free after 60 min (fresh 40), 21.5 °C, 55 % humidity, glass, 1 coat",
            HistoryWords.Of(full));
    }

    [Theory]
    [InlineData(true, null, "test passed")]
    [InlineData(false, 40, "test failed, still soft after 40 min")]
    public void Words_of_a_plain_test_stay(bool passed, int? minutes, string words) => Assert.Equal(words, HistoryWords.Of(new Tested(Day, passed, minutes)));

    private static DropReadings Read(int? tack, int? freshTack, int? print, int? freshPrint) =>
        new() { TackFreeMinutes = tack, FreshTackFreeMinutes = freshTack, PrintFreeMinutes = print, FreshPrintFreeMinutes = freshPrint };
}
