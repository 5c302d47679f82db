namespace JarLabel.Layout.Designs;

/// <summary>The keys a design may name; a misspelt one would silently never be printed.</summary>
public static class Vocabulary
{
    /// <summary>Keys of single wordings.</summary>
    public static IReadOnlyList<string> Words { get; } =
    [
        "cut", "cutUnit", "cutMetric", "grade", "jar", "revision", "jarLine", "solvent", "contents", "batch", "amounts", "signal", "poison",
        "owner", "job", "note", "by", "mixedDate", "useByDate", "testDate", "readyDate", "keeping", "closing", "title", "subtitle", "moreOnCard", "stepsBetween", "advice", "danger", "warning", "lid", "rags", "dangers", "swallowed",
    ];

    /// <summary>Keys of lists of sentences.</summary>
    public static IReadOnlyList<string> Lists { get; } = ["hazards", "precautions", "firstAid", "handling", "rules", "figures", "sentences"];

    /// <summary>Keys of tables.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["dates", "batch", "thinning", "history", "timeline", "stock", "air", "duties", "limits"];
}
