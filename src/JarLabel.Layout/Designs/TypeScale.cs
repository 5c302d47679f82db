namespace JarLabel.Layout.Designs;

/// <summary>The only type sizes there are, so that labels, cards and notices look like one family.</summary>
public static class TypeScale
{
    /// <summary>The sizes, in points.</summary>
    public static IReadOnlyList<double> Points { get; } =
        [5.5, 6, 6.5, 7, 8, 9, 10, 11, 12, 14, 17, 20, 24, 28, 34, 40, 48, 56, 62, 68, 80, 88, 96, 120, 144];
}
