namespace JarLabel.Core.Labels;

/// <summary>A jar in one line.</summary>
public static class JarTitle
{
    /// <summary><c>1½ lb cut garnet in ethanol 95 %</c>.</summary>
    public static string Of(Jar jar, ShopCatalog catalog)
    {
        var cut = jar.Contents.Cut is { } known ? CutWords.Of(known) : "empty";
        return $"{cut}, {GradeWords.Of(jar.Held, catalog)} in {GradeWords.Solvents(jar.Held, catalog)}";
    }
}
