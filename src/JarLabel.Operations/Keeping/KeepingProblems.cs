namespace JarLabel.Operations.Keeping;

/// <summary>What should be known of how long jars keep, and of where they stand.</summary>
internal static class KeepingProblems
{
    private const int MostNamed = 12;

    internal static Problem TestsAlone(JarNumber jar) =>
        new("JL217", Message.Of($"Jar {jar} holds several batches or alcohols, got fresh flakes, or is of flakes that were going off: this test holds for it alone, and {new Remedy("keeping")} learns nothing from it."), "jar");

    internal static Problem TestTooEarly(Jar jar) =>
        new("JL230", Message.Of($"The flakes of jar {jar.Number} should be dissolved only on {DateWords.Of(jar.Dates.Ready)}: what dries of it before is no test of how long it keeps, and {new Remedy("keeping")} learns nothing from it. Try it again then."), "jar");

    internal static Problem StandsThere(string what, string shelf) =>
        new("JL218", $"{what} stands on shelf {Quoted.Of(shelf)} already; nothing was recorded.", "shelf");

    internal static Problem Redated(string cause, IReadOnlyList<RedatedJar> jars) =>
        new("JL219", Message.Of($"The use-by of {CountWords.Of(jars.Count, "jar")} moved with {cause}: {string.Join(", ", jars.Take(MostNamed).Select(j => $"jar {j.Jar} now {DateWords.Estimate(j.UseBy)}"))}{(jars.Count > MostNamed ? " and more" : "")}. {Labels(jars)}"), "value");

    internal static Problem WarmUntil(string shelf, Temperature warm, DateOnly until, Temperature then) => new("JL238", string.Create(
        CultureInfo.InvariantCulture, $"Shelf {Quoted.Of(shelf)} counts as {warm.DegreesCelsius:0.#} °C until {DateWords.Of(until)}; from that day on it is {then.DegreesCelsius:0.#} °C, as was said of it before."), "value");

    private static Message Labels(IReadOnlyList<RedatedJar> jars) => jars.Where(j => j.Labelled).ToArray() switch
    {
        [] => Message.Of($"None of them has a label."),
        [var one] => Message.Of($"The label of jar {one.Jar} is out of date: {new Remedy("label", new InputName("jar", $"{one.Jar.Value}"))} prints it anew."),
        [var first, ..] several => Message.Of($"{several.Length} labels are out of date, such as that of jar {first.Jar}: {new Remedy("label", new InputName("jar", $"{first.Jar.Value}"))} prints it anew."),
    };
}

/// <summary>A jar that got other dates because its shelf became warmer or cooler.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="UseBy">Its use-by now.</param>
/// <param name="Labelled">True when a label tells the old one.</param>
internal readonly record struct RedatedJar(JarNumber Jar, DateOnly UseBy, bool Labelled);
