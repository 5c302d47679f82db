namespace JarLabel.Layout.Marks;

/// <summary>How everything reads in pure black and white: a colour that carries white drawing becomes black, one that carries black
/// drawing becomes white. Never a grey.</summary>
public static class OneBit
{
    /// <summary>Black or white.</summary>
    public static Ink Of(Ink ink) => ink is Ink.White or Ink.Yellow or Ink.Orange ? Ink.White : Ink.Black;

    /// <summary>The same page in black and white.</summary>
    public static Page Of(Page page)
    {
        ArgumentNullException.ThrowIfNull(page);
        return page with { Marks = [.. page.Marks.Select(Of)] };
    }

    private static Mark Of(Mark mark) => mark switch
    {
        TextMark text => text with { Ink = Of(text.Ink) },
        BarMark bar => bar with { Ink = Of(bar.Ink) },
        PathMark path => path with { Ink = Of(path.Ink) },
        _ => mark,
    };
}
