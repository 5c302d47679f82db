using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using UnitsNet;

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
