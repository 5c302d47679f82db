namespace JarLabel.Core.Labels;

/// <summary>So many of something.</summary>
public static class CountWords
{
    /// <summary><c>1 jar</c>, <c>3 jars</c>.</summary>
    public static string Of(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    /// <summary><c>2 jars, 1 bag</c>; what there is none of is left out.</summary>
    public static string Several(params IEnumerable<(int Count, string What)> kinds) => string.Join(", ", kinds.Where(kind => kind.Count > 0).Select(kind => Of(kind.Count, kind.What)));
}
