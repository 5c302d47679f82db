namespace JarLabel.Core.Catalog;

/// <summary>How a row of data says where it comes from: the id of a published source before the first comma, or one of two words.</summary>
public static class Sources
{
    /// <summary>A fact of the trade that no single source owns.</summary>
    public const string Practice = "practice";

    /// <summary>Known, but not looked up: shown as unverified.</summary>
    public const string Memory = "memory";

    /// <summary>What stands before the first comma.</summary>
    public static string Id(string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var comma = source.IndexOf(',', StringComparison.Ordinal);
        return (comma < 0 ? source : source[..comma]).Trim();
    }

    /// <summary>True for a source that says <c>memory</c>.</summary>
    public static bool IsMemory(string source) => Id(source) == Memory;
}
