namespace JarLabel.Layout.Designs;

/// <summary>Where something stands in more room than it needs, along one axis.</summary>
public enum Align
{
    /// <summary>Left or top.</summary>
    Start,

    /// <summary>In the middle.</summary>
    Middle,

    /// <summary>Right or bottom.</summary>
    End,
}
