namespace JarLabel.Core.Hazards;

/// <summary>What can be wrong with typed percentages.</summary>
internal static class HazardProblems
{
    private const string Example = "\"ethanol=90,methanol=5,water=5\"";

    internal static Problem NotAShare(string read, string? where) =>
        new("JL151", $"Read {Quoted.Of(read)}; wanted is a substance, \"=\" and its percent from 0 to 100, a range such as 30-60, <3 or >=50, or \"rest\" for what the others leave: {Example}.", where);

    /// <summary>The same where a substance is chosen and its percent stands beside it.</summary>
    internal static Problem NotAPercent(string read, string? where) =>
        new("JL151", $"{(read.Length == 0 ? "The percent is missing" : $"Read {Quoted.Of(read)} as a percent")}; wanted is one from 0 to 100, a range such as 30-60, <3 or >=50, or \"rest\" for what the others leave.", where);

    /// <summary>A substance that was chosen in more than one row.</summary>
    internal static Problem ChosenTwice(string name, string? where) => new("JL152", $"\"{name}\" is chosen more than once; add its percentages up in one row.", where);

    internal static Problem NamedTwice(string id, string? where) =>
        new("JL152", $"Read \"{id}\" more than once; add its shares up, such as {Example}.", where);

    /// <param name="least">The least that they add up to.</param>
    /// <param name="most">The most.</param>
    /// <param name="where">Where they were typed.</param>
    /// <param name="undeclared">What is chosen for what nobody has declared; null where substances are typed.</param>
    internal static Problem NotAHundred(decimal least, decimal most, string? where, string? undeclared) => new(
        "JL153",
        (least == most
            ? string.Create(CultureInfo.InvariantCulture, $"The percentages add up to {least:0.####}, which is {Math.Abs(100 - least):0.####} too {(least < 100 ? "little" : "much")}; wanted is 100{Such(Example, undeclared)}.")
            : string.Create(CultureInfo.InvariantCulture, $"The ranges add up to at least {least:0.####} and at most {most:0.####}; 100 must lie between{Such("\"ethanol=30-60,methanol=30-60\"", undeclared)}."))
        + (undeclared is null
            ? " What nobody has declared can be named \"unknown\", and what the others leave \"rest\": \"unknown=rest\"."
            : $" For what nobody has declared choose \"{undeclared}\"; the percent of what the others leave is \"rest\"."),
        where);

    internal static Problem TooManyRanges(int read, string? where, string? undeclared) => new(
        "JL222",
        string.Create(CultureInfo.InvariantCulture, $"Read {read} ranges; at most {RangeCorners.MostRanges} can be worked out together. Give the narrowest as one figure, their upper end{Such("denatonium=0.001", undeclared)}."),
        where);

    private static string Such(string typed, string? undeclared) => undeclared is null ? $", such as {typed}" : "";
}
