using System.Globalization;
using JarLabel.Core;

namespace JarLabel.Bench.Planning;

/// <summary>What can be wrong with a job.</summary>
public static class PlanProblems
{
    /// <summary>The code of everything wrong inside a job file.</summary>
    public const string FileCode = "JL128";

    /// <summary>Options that do not come in pairs.</summary>
    public static Problem UnevenLines(string option, int read, int wanted) => new(
        "JL127",
        string.Create(CultureInfo.InvariantCulture, $"Read {option} {read} time{(read == 1 ? "" : "s")} for {wanted} line{(wanted == 1 ? "" : "s")}; each --for has its own, in the same order, such as --for seal --area \"14 sq ft\" --coats 1 --for pad --area \"14 sq ft\" --coats 8."),
        option);

    /// <summary>No job at all.</summary>
    public static Problem NoJob() => new(
        "JL129", "Read no job; say --for wash, seal, pad, brush or spray with --area and --coats, such as --for pad --area \"14 sq ft\" --coats 8, or name a JSON file of such lines.", "--for");

    internal static Problem Unreadable(string file, string why) => new(FileCode, $"The job file cannot be read: {why}", file);

    internal static string TooManyLines => string.Create(CultureInfo.InvariantCulture, $"The job has more than {JobFile.MostLines} lines; plan it in parts.");

    internal const string NoLines = "A job has at least one line, such as { \"for\": \"pad\", \"area\": \"14 sq ft\", \"coats\": 8 }.";
}
