namespace JarLabel.Store.Files;

/// <summary>A file that was written beside its place and waits for its step to be recorded.</summary>
/// <param name="Id">Its row in <c>files</c>.</param>
/// <param name="Place">The full path of its place.</param>
/// <param name="Part">The full path of what was written.</param>
/// <param name="Sha256">The hash of what was written.</param>
internal sealed record PendingFile(long Id, string Place, string Part, byte[] Sha256)
{
    /// <summary>The place as the guard saw it; null when another writer staged the file.</summary>
    internal GuardedPlace? Guarded { get; init; }
}
