namespace JarLabel.Web.Guards;

/// <summary>Who comes with a request.</summary>
/// <param name="Device">The paired device's id, <c>here</c> on this machine, empty for a stranger.</param>
/// <param name="MayRead">True when it may look.</param>
/// <param name="MayRecord">True when it may record.</param>
internal sealed record Visitor(string Device, bool MayRead, bool MayRecord)
{
    /// <summary>The paired device; null where none is needed, and for a stranger.</summary>
    internal Device? Paired { get; init; }
}
