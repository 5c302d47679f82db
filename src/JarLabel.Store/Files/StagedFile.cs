namespace JarLabel.Store.Files;

/// <summary>A file that will be in its place once the step it belongs to is recorded.</summary>
/// <param name="Path">Where it will be: inside the shop folder relative to it and with <c>/</c>, else the full path.</param>
/// <param name="Sha256">The SHA-256 of its bytes, 64 lower-case hexadecimal digits.</param>
/// <param name="Bytes">Its length.</param>
public sealed record StagedFile(string Path, string Sha256, long Bytes);
