using System.Text.RegularExpressions;
using JarLabel.Operations.Steps;

namespace JarLabel.Operations.Typing;

/// <summary>What is left in a bag or bottle: an amount, or nothing.</summary>
internal static partial class LeftText
{
    private static readonly string[] Nothing = ["empty", "nothing", "none"];

    /// <summary>Reads <c>120 g</c>; <c>empty</c>, <c>0</c> and <c>0 g</c> are nothing.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="where">Where.</param>
    /// <param name="amount">Reads an amount with its unit.</param>
    /// <param name="none">No amount at all.</param>
    internal static Result<T> Read<T>(string text, string where, Reader<T> amount, T none)
        where T : notnull
    {
        if (Nothing.Contains(text.Trim(), StringComparer.OrdinalIgnoreCase))
        {
            return none;
        }

        // Of nothing, too, the unit must be one that measures such a thing.
        return Zero().Match(text) is { Success: true } zero && (zero.Groups["unit"].Length == 0 || amount($"1 {zero.Groups["unit"].Value}", where).Ok) ? none : amount(text, where);
    }

    [GeneratedRegex(@"^\s*0+([.,]0+)?\s*(?<unit>[^\d\s].*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Zero();
}
