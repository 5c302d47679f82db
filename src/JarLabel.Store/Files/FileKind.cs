namespace JarLabel.Store.Files;

/// <summary>What stands at a path.</summary>
internal enum FileKind
{
    /// <summary>A file of bytes.</summary>
    File,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A pipe, which ends in another program.</summary>
    Pipe,

    /// <summary>A device, such as <c>/dev/null</c>.</summary>
    Device,

    /// <summary>A socket.</summary>
    Socket,
}
