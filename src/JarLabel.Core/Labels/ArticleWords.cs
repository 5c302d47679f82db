namespace JarLabel.Core.Labels;

/// <summary>The article before a figure, as it is spoken: an 8, an 11, an 18, a 2.</summary>
public static class ArticleWords
{
    /// <summary><c>an 8</c>, <c>a 1.5</c>.</summary>
    /// <param name="figure">A number as it is shown.</param>
    public static string A(string figure) => (figure.StartsWith('8') || figure.Split('.')[0] is "11" or "18" ? "an " : "a ") + figure;
}
