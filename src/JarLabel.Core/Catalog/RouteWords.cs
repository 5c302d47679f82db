namespace JarLabel.Core.Catalog;

/// <summary>How the routes are written in data files, and in sentences.</summary>
public static class RouteWords
{
    internal static IReadOnlyDictionary<string, Route> Choices { get; } = new Dictionary<string, Route>(StringComparer.Ordinal)
    {
        ["oral"] = Route.Oral,
        ["dermal"] = Route.Dermal,
        ["vapor"] = Route.Vapor,
    };

    /// <summary>As part of a sentence: <c>by mouth</c>.</summary>
    public static string Way(this Route route) => route switch
    {
        Route.Oral => "by mouth",
        Route.Dermal => "through the skin",
        _ => "by breathing",
    };

    /// <summary>The unit of its estimates: mg/kg, or mg/L for vapour.</summary>
    public static string Unit(this Route route) => route == Route.Vapor ? "mg/L" : "mg/kg";
}
