namespace JarLabel.Cli.Typing;

/// <summary>Words that people write for an option of another name, where letters that are alike would lead astray: <c>--weight</c> of a bag is <c>--mass</c>.</summary>
internal static class MeantOptions
{
    private static readonly Dictionary<string, string[]> Meant = new(StringComparer.OrdinalIgnoreCase)
    {
        ["weight"] = ["--mass", "--flakes"],
        ["flakes"] = ["--mass"],
        ["grams"] = ["--mass", "--flakes"],
        ["amount"] = ["--mass", "--volume", "--pour"],
        ["size"] = ["--mass", "--volume", "--container"],
        ["holds"] = ["--mass", "--volume"],
        ["alcohol"] = ["--solvent"],
        ["shellac"] = ["--grade"],
        ["type"] = ["--grade", "--solvent"],
        ["kind"] = ["--grade", "--solvent"],
        ["strength"] = ["--cut"],
        ["jar"] = ["--container"],
        ["made"] = ["--date"],
        ["bought"] = ["--date"],
        ["opened"] = ["--date"],
        ["day"] = ["--date", "--at"],
        ["reason"] = ["--why"],
        ["comment"] = ["--note"],
        ["remark"] = ["--note"],
        ["file"] = ["--out"],
        ["output"] = ["--out"],
    };

    /// <summary>The first option of these that such a word stands for; null for none.</summary>
    /// <param name="typed">What was typed, dashes and all.</param>
    /// <param name="known">The options that may stand there.</param>
    internal static string? Of(string typed, IReadOnlyCollection<string> known) =>
        Meant.GetValueOrDefault(typed.TrimStart('-'), []).FirstOrDefault(known.Contains);
}
