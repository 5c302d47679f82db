using JarLabel.Core.Keeping;

namespace JarLabel.Core.Labels;

/// <summary>How an estimated use-by was come by, in one short line.</summary>
public static class KeepingWords
{
    /// <summary><c>published claims and 6 drying tests here</c>.</summary>
    public static string Basis(KeepingDates dates)
    {
        ArgumentNullException.ThrowIfNull(dates);
        return dates.Basis switch
        {
            null => "published claims, no drying test here yet",
            { Tests: 0, Related: var related } => $"published claims and {CountWords.Of(related, "tested jar")} of other kinds",
            { Tests: var tests } => $"published claims and {CountWords.Of(tests, "drying test")} here",
        };
    }
}
