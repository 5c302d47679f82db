namespace JarLabel.Core.Labels;

/// <summary>The words of the key, in the order in which a jar's line is drawn.</summary>
public static class ShelfChartKey
{
    /// <summary>The upright stroke at the beginning.</summary>
    public const string Mixed = "mixed";

    /// <summary>The dots.</summary>
    public const string Dissolving = "dissolving, until ready";

    /// <summary>The filled bar.</summary>
    public const string Good = "good";

    /// <summary>The half-filled bar.</summary>
    public const string Test = "test first";

    /// <summary>The diamond.</summary>
    public const string UseBy = "use by ≈";

    /// <summary>The hollow bar.</summary>
    public const string Past = "past, or failed";

    /// <summary>The tick.</summary>
    public const string Passed = "test passed";

    /// <summary>The cross.</summary>
    public const string Failed = "test failed";
}
