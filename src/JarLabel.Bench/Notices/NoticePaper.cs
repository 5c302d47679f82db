namespace JarLabel.Bench.Notices;

/// <summary>The paper of a wall notice, on its side.</summary>
public enum NoticePaper
{
    /// <summary>297 x 210 mm.</summary>
    A4,

    /// <summary>11 x 8½ inches.</summary>
    Letter,
}
