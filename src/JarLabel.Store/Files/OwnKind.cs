namespace JarLabel.Store.Files;

/// <summary>The kinds of files that the program writes for others to use.</summary>
public enum OwnKind
{
    /// <summary>None of them.</summary>
    None,

    /// <summary>A page or pages to print.</summary>
    Pdf,

    /// <summary>A picture in dots.</summary>
    Png,

    /// <summary>A picture in lines.</summary>
    Svg,

    /// <summary>A calendar.</summary>
    Calendar,

    /// <summary>All events, one a line.</summary>
    Export,

    /// <summary>A page of a pocket copy.</summary>
    Web,
}
