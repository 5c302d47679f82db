namespace JarLabel.Bench.Answers;

/// <summary>How the jar card is spoken of, on which whatever has no room elsewhere is printed.</summary>
internal static class Cards
{
    /// <summary>The id of its design.</summary>
    internal const string Design = "card";

    /// <summary>The word before what has no room on a card itself.</summary>
    internal const string LeftOut = "not on it";
}
