namespace JarLabel.Core.Keeping;

/// <summary>How a few drops dried on glass, the worst first.</summary>
public enum Drying
{
    /// <summary>They stayed soft or tacky.</summary>
    Soft,

    /// <summary>They dried hard, but clearly slower than a fresh batch beside them: the jar is near its end.</summary>
    Slow,

    /// <summary>They dried hard; nothing was held against them.</summary>
    Hard,

    /// <summary>They dried hard, as fast as a fresh batch beside them.</summary>
    Fresh,
}
