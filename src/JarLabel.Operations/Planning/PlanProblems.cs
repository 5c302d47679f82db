namespace JarLabel.Operations.Planning;

/// <summary>What can be wrong with a job.</summary>
public static class PlanProblems
{
    /// <summary>The code of everything wrong inside a job file.</summary>
    public const string FileCode = "JL128";

    /// <summary>Options that do not come in pairs.</summary>
    internal static Problem UnevenLines(string name, int read, int wanted) => new(
        "JL127",
        Message.Of($"Read {new InputName(name)} {read} time{(read == 1 ? "" : "s")} for {wanted} line{(wanted == 1 ? "" : "s")}; each {new InputName("for")} has its own, in the same order, such as {new InputName("for", "seal")} {new InputName("area", "14 sq ft")} {new InputName("coats", "1")} {new InputName("for", "pad")} {new InputName("area", "14 sq ft")} {new InputName("coats", "8")}."),
        name);

    /// <summary>No job at all.</summary>
    internal static Problem NoJob() => new(
        "JL129",
        Message.Of($"Read no job; say {new InputName("for")} wash, seal, pad, brush or spray with {new InputName("area")} and {new InputName("coats")}, such as {new InputName("for", "pad")} {new InputName("area", "14 sq ft")} {new InputName("coats", "8")}."),
        "for");

    internal static Problem Unreadable(string file, string why) => new(FileCode, $"The job file cannot be read: {why}", file);

    internal static string TooManyLines => string.Create(CultureInfo.InvariantCulture, $"The job has more than {JobFile.MostLines} lines; plan it in parts.");

    internal const string NoLines = "A job has at least one line, such as { \"for\": \"pad\", \"area\": \"14 sq ft\", \"coats\": 8 }.";
}
