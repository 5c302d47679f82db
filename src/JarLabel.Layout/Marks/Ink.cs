namespace JarLabel.Layout.Marks;

/// <summary>The few colours the house prints with. Black and white carry everything; the rest is for frames and signs.</summary>
public enum Ink
{
    /// <summary>Pure black.</summary>
    Black,

    /// <summary>Pure white.</summary>
    White,

    /// <summary>The red of pictogram frames, prohibition rings and the danger panel.</summary>
    Red,

    /// <summary>The orange of the warning panel.</summary>
    Orange,

    /// <summary>The yellow of warning triangles.</summary>
    Yellow,

    /// <summary>The blue of mandatory signs.</summary>
    Blue,

    /// <summary>The green of first-aid signs.</summary>
    Green,

    /// <summary>A pale grey behind a drawing, for lines that lead the eye and say nothing of their own. White in one bit.</summary>
    Pale,
}
