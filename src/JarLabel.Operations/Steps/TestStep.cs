namespace JarLabel.Operations.Steps;

/// <summary>Records how a few drops of a jar dried on glass.</summary>
internal static class TestStep
{
    private static Input<Drying> Verdict => field ??= Input.Of("verdict", "A few drops on glass", "pass", (Reader<Drying>)ValueReader.Verdict)
        .Help("word", "pass when the drops dried hard, fail (or soft) when they stayed soft or tacky; fresh when they dried hard as fast as a fresh batch beside them, slow when hard but clearly slower.")
        .Argument().Observed()
        .Choices(_ =>
        [
            ("", "choose"),
            ("pass", "dried hard: pass"),
            ("fresh", "dried hard, as fast as a fresh batch"),
            ("slow", "dried hard, clearly slower than a fresh batch"),
            ("fail", "stayed soft or tacky: fail"),
        ]);

    private static Input<int?> DryMinutes => field ??= Minutes("dry-minutes", "Minutes until dry", "may stay empty", "How long they took to dry.");

    private static Input<int?> TackFree => field ??= Minutes("tack-free", "Minutes until tack-free", "a finger no longer sticks; may stay empty", "Minutes until a finger no longer sticks.");

    private static Input<int?> PrintFree => field ??= Minutes("print-free", "Minutes until print-free", "cloth pressed on it leaves no print", "Minutes until cloth pressed on it leaves no print.").More();

    private static Input<int?> FreshTackFree => field ??= Minutes(
        "fresh-tack-free", "Fresh batch beside it, tack-free", "minutes; may stay empty", "The same of a fresh batch beside it; with it, pass means fresh or slow by the minutes.");

    private static Input<int?> FreshPrintFree => field ??= Minutes("fresh-print-free", "Fresh batch beside it, print-free", "minutes", "The same of a fresh batch beside it.").More();

    private static Input<Temperature?> Temperature => field ??= Input.Optional("temp", "Temperature at the bench", "20 C", TemperatureText.Read).In(UsualUnits.Temperatures)
        .Help("temperature", "Temperature at the bench: 68F, \"20 C\".").Hint("20 C, 68F").More().Observed();

    private static Input<int?> Humidity => field ??= Input.Optional<int>("humidity", "Relative humidity, %", "55", ValueReader.WholePercent(1, 100, 55).Invoke)
        .Help("percent", "Relative humidity in %: 55.").More().Observed();

    private static Input<string?> Film => field ??= Input.Optional("film", "Put on, and how thick", "glass, 1 coat", Shared.Printed(60))
        .Help("text", "What they were put on and how thick: \"glass, 1 coat\".").More().Observed();

    private static Input<DropReadings> Readings => field ??= Input.Group<DropReadings>([TackFree, PrintFree, FreshTackFree, FreshPrintFree, Temperature, Humidity, Film], given => new DropReadings
    {
        TackFreeMinutes = given.Get(TackFree),
        PrintFreeMinutes = given.Get(PrintFree),
        FreshTackFreeMinutes = given.Get(FreshTackFree),
        FreshPrintFreeMinutes = given.Get(FreshPrintFree),
        Temperature = given.Get(Temperature),
        HumidityPercent = given.Get(Humidity),
        Film = given.Get(Film),
    });

    internal static Step Step => field ??= Step.OnJar("test", "Test", "Record how a few drops dried on glass.", [Verdict, DryMinutes, Readings],
        given => TestJar.Do(given.Bench, Step.Jar(given), given.Get(Verdict), given.Get(DryMinutes), given.Get(Readings))) with
    {
        Button = "Record the test",
        IsAskedFor = (jar, now) => jar.FailedOn is null && jar.StateAt(now) != JarState.Dissolving && jar.Dates.Ready <= now && (jar.Doubts.Any || jar.StateAt(now) is JarState.Test or JarState.Past) && jar.Test?.Day != DateOnly.FromDateTime(now),
        Says = "A few drops on glass, and beside them a few of a fresh batch: minutes beside its minutes tell more than minutes alone.",
    };

    private static Input<int?> Minutes(string name, string label, string hint, string help) =>
        Input.Optional<int>(name, label, "40", ValueReader.WholeNumber(1, TestJar.LongestMinutes).Invoke).Help("minutes", help).Hint(hint).Observed();
}
