namespace JarLabel.Core.Labels;

/// <summary>The words of the notice that hangs over a solvent shelf. What stands large is read from across the room; the rest is for
/// whoever steps closer.</summary>
public static class ShelfNotice
{
    /// <summary>What comes before everything that is said of alcohol on a wall or at a bench.</summary>
    internal const string Closing = "The local fire code, the alcohol's own label and data sheet, and licensed practice come first.";

    /// <summary>Everything that may be printed on it.</summary>
    public static LabelText For(NoticeFacts facts) =>
        new LabelText(Words(facts), Lists(facts), Tables(facts), Warnings(facts), null, null);

    private static Dictionary<string, IReadOnlyList<string>> Words(NoticeFacts facts)
    {
        var words = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal)
        {
            ["closing"] = [Closing],
        };
        if (SignalKey(facts.Stock.Signal) is { } signal)
        {
            words[signal] = [signal.ToUpperInvariant()];
        }

        if (string.Join(" · ", ((string?[])[facts.ShopName, facts.Contact]).OfType<string>()) is { Length: > 0 } owner)
        {
            words["owner"] = [owner];
        }

        return words;
    }

    private static string? SignalKey(SignalWord signal) => signal switch
    {
        SignalWord.Danger => "danger",
        SignalWord.Warning => "warning",
        _ => null,
    };

    private static Dictionary<string, IReadOnlyList<string>> Lists(NoticeFacts facts) => new(StringComparer.Ordinal)
    {
        ["sentences"] = Sentences(facts),
    };

    /// <summary>What the signs cannot say, five sentences at the most, each short enough for one line at the size that is read from 3 m.
    /// Rags come last because they are what is done last.</summary>
    private static IReadOnlyList<string> Sentences(NoticeFacts facts) =>
        ["Air the room.", facts.Stock.Toxic ? "Do not drink." : "Lids tight.", "Rags outside."];

    private static Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> Tables(NoticeFacts facts) => new(StringComparer.Ordinal)
    {
        ["stock"] = NoticeTables.Stock(facts),
        ["air"] = NoticeTables.Air(facts),
        ["duties"] = NoticeDuties.Of(facts),
        ["limits"] = NoticeLimits.Of(facts),
    };

    /// <summary>The warning signs of ISO 7010; prohibitions and duties are the same for every solvent shelf and stand in the design.</summary>
    private static string[] Warnings(NoticeFacts facts) => facts.Stock.Toxic ? ["W021", "W016"] : ["W021"];
}
