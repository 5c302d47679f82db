using System.Globalization;

namespace JarLabel.Core.Hazards;

/// <summary>What can be wrong with typed percentages.</summary>
internal static class HazardProblems
{
    private const string Example = "\"ethanol=90,methanol=5,water=5\", percent by weight";

    internal static Problem NotAShare(string read, string? where) =>
        new("JL151", $"Read {Quoted.Of(read)}; wanted is a substance, \"=\" and a number from 0 to 100, such as {Example}.", where);

    internal static Problem NamedTwice(string id, string? where) =>
        new("JL152", $"Read \"{id}\" more than once; add its shares up, such as {Example}.", where);

    internal static Problem NotAHundred(decimal sum, string? where) =>
        new("JL153", string.Create(CultureInfo.InvariantCulture, $"The percentages add up to {sum:0.####}, which is {Math.Abs(100 - sum):0.####} too "
            + $"{(sum < 100 ? "little" : "much")}; wanted is 100, such as {Example}. What nobody has declared can be named \"unknown\"."), where);
}
