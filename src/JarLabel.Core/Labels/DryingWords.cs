namespace JarLabel.Core.Labels;

/// <summary>A drying test in words.</summary>
public static class DryingWords
{
    /// <summary><c>test passed, slow but hard, 1.8 times as long as fresh: tack-free after 45 min (fresh 25); 21 °C, 55 % damp; glass, 1 coat</c>.</summary>
    public static string Of(Tested test)
    {
        string?[] said = [$"test {(test.Passed ? "passed" : "failed")}", Verdict(test.HowDried), Number(test.DryMinutes, m => $"{(test.Passed ? "dry" : "still soft")} after {m} min"), .. test.Readings is { } read ? Read(read) : []];
        return string.Join(", ", said.OfType<string>());
    }

    /// <summary>How drops dried, where more is known than that they did or did not; else null.</summary>
    public static string? Verdict(Drying dried) => dried switch
    {
        Drying.Fresh => "like fresh",
        Drying.Slow => "slow but hard",
        _ => null,
    };

    /// <summary><c>passed</c>, <c>passed slowly</c> or <c>failed</c>, for a list.</summary>
    public static string InList(TestResult test) => !test.Passed ? "failed" : test.Slow ? "passed slowly" : "passed";

    private static IEnumerable<string?> Read(DropReadings read) =>
    [
        Minutes("tack-free", read.TackFreeMinutes, read.FreshTackFreeMinutes),
        Minutes("print-free", read.PrintFreeMinutes, read.FreshPrintFreeMinutes),
        read.Temperature is { } warm ? string.Create(CultureInfo.InvariantCulture, $"{warm.DegreesCelsius:0.#} °C") : null,
        Number(read.HumidityPercent, p => $"{p} % humidity"),
        read.Film,
    ];

    private static string? Minutes(string what, int? own, int? fresh) => Number(own, m => $"{what} after {m} min{Number(fresh, f => $" (fresh {f})")}") ?? Number(fresh, f => $"fresh {what} after {f} min");

    private static string? Number(int? number, Func<string, string> say) => number is { } known ? say(known.ToString(CultureInfo.InvariantCulture)) : null;
}
