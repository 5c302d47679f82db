namespace JarLabel.Core.Hazards;

/// <summary>What can be wrong with typed percentages.</summary>
internal static class HazardProblems
{
    private const string Example = "\"ethanol=90,methanol=5,water=5\"";

    internal static Problem NotAShare(string read, string? where) =>
        new("JL151", $"Read {Quoted.Of(read)}; wanted is a substance, \"=\" and its percent from 0 to 100, a range such as 30-60, <3 or >=50, or \"rest\" for what the others leave: {Example}.", where);

    internal static Problem NamedTwice(string id, string? where) =>
        new("JL152", $"Read \"{id}\" more than once; add its shares up, such as {Example}.", where);

    internal static Problem NotAHundred(decimal least, decimal most, string? where) => new(
        "JL153",
        (least == most
            ? string.Create(CultureInfo.InvariantCulture, $"The percentages add up to {least:0.####}, which is {Math.Abs(100 - least):0.####} too {(least < 100 ? "little" : "much")}; wanted is 100, such as {Example}.")
            : string.Create(CultureInfo.InvariantCulture, $"The ranges add up to at least {least:0.####} and at most {most:0.####}; 100 must lie between, such as \"ethanol=30-60,methanol=30-60\"."))
        + " What nobody has declared can be named \"unknown\", and what the others leave \"rest\": \"unknown=rest\".",
        where);

    internal static Problem TooManyRanges(int read, string? where) => new(
        "JL222",
        string.Create(CultureInfo.InvariantCulture, $"Read {read} ranges; at most {RangeCorners.MostRanges} can be reckoned through. Give the narrowest as one figure, their upper end, such as denatonium=0.001."),
        where);
}
