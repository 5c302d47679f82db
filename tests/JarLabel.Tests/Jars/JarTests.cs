using System.Reflection;
using System.Text.Json.Serialization;

namespace JarLabel.Tests.Jars;

public class JarTests
{
    private static readonly DateTime At = new(2026, 3, 9, 10, 0, 0);

    [Fact]
    public void An_event_reads_back_as_it_was_written()
    {
        var mixed = Mix("viola top, \"second\" coat / back\\slash ünïcode");
        var read = Assert.IsType<Mixed>(JarEventJson.Read(JarEventJson.Write(mixed), "event 1").Require());
        Assert.Equal(JarEventJson.Write(mixed), JarEventJson.Write(read));
        Assert.Equal(mixed.Job, read.Job);
        Assert.Equal(350, read.Contents.Poured.Milliliters, 1e-9);
        Assert.Equal(62.9, read.Contents.Flakes.Grams, 1e-9);
        Assert.Equal(mixed.Dates, read.Dates);
    }

    [Fact]
    public void The_kept_form_of_an_event_stays_what_it_was()
    {
        const string kept = """
            {"event":"Mixed","contents":{"resins":[{"grade":"garnet","grams":62.9}],"solvents":[{"solvent":"ethanol-95","milliliters":350,"grams":284}]},"container":{"material":"Glass","milliliters":500},"dates":{"ready":"2026-03-10T10:00:00","testFrom":"2026-07-09","useBy":"2026-11-09"},"shelf":"main","benchCelsius":20,"at":"2026-03-09T10:00:00"}
            """;
        Assert.Equal(kept.Trim(), JarEventJson.Write(Mix(null)));
    }

    /// <summary>Lines as earlier versions wrote them through the library that knows all kinds of events.</summary>
    [Theory]
    [InlineData("""{"event":"Mixed","contents":{"resins":[{"grade":"garnet","grams":62.908874341370726,"flakeDate":"2024-11-20"},{"grade":"blonde","grams":1E-05,"cloudy":true}],"solvents":[{"solvent":"ethanol-95","milliliters":350,"grams":283.98311481926606}]},"container":{"material":"LinedMetal","milliliters":500},"dates":{"ready":"2025-01-15T10:00:00","testFrom":"2025-05-14","useBy":"2025-09-14","basis":{"tests":2,"related":1}},"shelf":"b\u00E4nk","benchCelsius":20.5,"by":"Wren","job":"\u0022desk\u0022 \u0026 \u003Cchair\u003E","note":"a\\b","bag":1,"bottle":999999999,"at":"2025-01-14T10:00:00.5"}""")]
    [InlineData("""{"event":"Mixed","contents":{"resins":[],"solvents":[]},"container":{"material":"Plastic"},"dates":{"ready":"2025-01-15T10:00:00","testFrom":"2025-05-14","useBy":"2025-09-14"},"shelf":"bench","benchCelsius":-3,"at":"2025-01-14T10:00:00"}""")]
    [InlineData("""{"event":"Labelled","revision":1,"file":"labels/jar-1-9-r1-wide.pdf","design":"wide","sheet":"letter-2x5-101.6x50.8","position":1,"payload":"JAR 1-9.1","sha256":"d3d416e416b78b3eb42874df302e299f11d683f8c39e03689d9a8eeab745a3a5","copies":3,"at":"2026-11-27T21:55:06"}""")]
    [InlineData("""{"event":"Labelled","revision":1,"file":"a.pdf","design":"wide","sheet":"a4","position":1,"payload":"JAR 1-9.1","at":"2026-11-27T21:55:06"}""")]
    public void A_line_of_an_earlier_version_reads_and_is_written_the_same(string line) =>
        Assert.Equal(line, JarEventJson.Write(JarEventJson.Read(line, "event 1").Require()));

    /// <summary>The line above that has everything must have what is added to an event, too.</summary>
    [Fact]
    public void Every_member_of_the_commonest_events_is_kept()
    {
        Assert.Equal(11, Kept(typeof(Mixed)));
        Assert.Equal(9, Kept(typeof(Labelled)));
        Assert.Equal([4, 3, 2, 4, 2], new[] { typeof(ResinPart), typeof(SolventPart), typeof(Container), typeof(KeepingDates), typeof(KeepingBasis) }.Select(Kept));

        static int Kept(Type type) => type.GetProperties().Count(member => member.GetCustomAttribute<JsonIgnoreAttribute>() is null or { Condition: not JsonIgnoreCondition.Always });
    }

    /// <summary>What is not as it was written goes the long way, and is told there.</summary>
    [Theory]
    [InlineData("\"position\":1,", "")]
    [InlineData("\"position\":1", "\"position\":1.5")]
    [InlineData("\"position\":1", "\"position\":\"1\"")]
    [InlineData("\"position\":1", "\"position\":1,\"position\":2,\"more\":1")]
    [InlineData("\"position\":1", "\"position\":1,\"copies\":\"three\"")]
    [InlineData("2026-11-27T21:55:06", "27 November")]
    public void A_line_that_is_amiss_is_told(string part, string amiss) => Assert.Equal("JL401", Assert.Single(JarEventJson.Read(
        """{"event":"Labelled","revision":1,"file":"a.pdf","design":"wide","sheet":"a4","position":1,"payload":"JAR 1-9.1","at":"2026-11-27T21:55:06"}"""
            .Replace(part, amiss, StringComparison.Ordinal), "event 1").Problems).Code);

    [Fact]
    public void What_nobody_said_is_left_out_and_reads_back()
    {
        var bare = Mix(null) with { Container = new Container(ContainerMaterial.Plastic) };
        var read = Assert.IsType<Mixed>(JarEventJson.Read(JarEventJson.Write(bare), "event 1").Require());
        Assert.Null(read.Container.Holds);
        Assert.Equal(ContainerMaterial.Plastic, read.Container.Material);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("[1]")]
    [InlineData("{\"event\":\"Drunk\",\"at\":\"2026-03-09T10:00:00\"}")]
    [InlineData("{\"event\":\"Mixed\",\"at\":\"2026-03-09T10:00:00\"}")]
    [InlineData("not json")]
    public void What_is_no_event_is_told(string json) =>
        Assert.Equal("JL401", Assert.Single(JarEventJson.Read(json, "event 7").Problems).Code);

    [Fact]
    public void A_jar_begins_with_its_mixing_and_a_label_changes_nothing_in_it()
    {
        var label = new Labelled(At, 1, "labels/a.pdf", "standard", "a4", 1, "JAR 142-5.1");
        var jar = Jar.Fold(JarNumber.From(142), [Mix(null), label]).Require();
        Assert.Equal(1, jar.Revision);
        Assert.Equal(1.5, jar.Contents.Cut!.Value.PoundsPerUsGallon, 0.001);
        Assert.Equal("JL480", Assert.Single(Jar.Fold(JarNumber.From(1), [label]).Problems).Code);
        Assert.Equal("JL480", Assert.Single(Jar.Fold(JarNumber.From(1), [Mix(null), Mix(null)]).Problems).Code);
        Assert.Equal("JL143", Assert.Single(Jar.Fold(JarNumber.From(1), []).Problems).Code);
    }

    private static Mixed Mix(string? job) => new(
        At,
        new Contents([new("garnet", Mass.FromGrams(62.9))], [new("ethanol-95", Volume.FromMilliliters(350), Mass.FromGrams(284))]),
        new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500)),
        new KeepingDates(At.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9)),
        "main",
        Temperature.FromDegreesCelsius(20),
        Job: job);
}
