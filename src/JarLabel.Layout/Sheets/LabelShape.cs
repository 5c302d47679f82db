namespace JarLabel.Layout.Sheets;

/// <summary>The outline of one label.</summary>
public enum LabelShape
{
    /// <summary>Four sides, corners square or rounded.</summary>
    Rectangle,

    /// <summary>A circle.</summary>
    Round,
}
