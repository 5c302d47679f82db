namespace JarLabel.Layout.Charts;

/// <summary>One sign of a drawing's key, with its word.</summary>
/// <param name="Words">What it stands for.</param>
/// <param name="Width">Its width, mm.</param>
/// <param name="Draw">Draws it with its left end at a place.</param>
internal readonly record struct KeySign(string Words, double Width, Func<double, IEnumerable<Mark>> Draw)
{
    /// <summary>The signs in one row, each with its word behind it.</summary>
    /// <param name="signs">The signs.</param>
    /// <param name="x">The row's left end, mm.</param>
    /// <param name="y">The row's middle, mm.</param>
    /// <param name="gap">Between a sign and its word, mm.</param>
    /// <param name="between">Between a word and the next sign, mm.</param>
    /// <param name="points">Type size of the words.</param>
    /// <param name="type">Sets them.</param>
    internal static IReadOnlyList<Mark> Row(IEnumerable<KeySign> signs, double x, double y, double gap, double between, double points, ChartType type)
    {
        var marks = new List<Mark>();
        foreach (var sign in signs)
        {
            marks.AddRange(sign.Draw(x));
            x += sign.Width + gap;
            marks.Add(ChartType.At("key", x, y + type.HalfCap(Face.Regular, points), sign.Words, Face.Regular, points));
            x += type.Width(sign.Words, Face.Regular, points) + between;
        }

        return marks;
    }
}
