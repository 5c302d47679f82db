namespace JarLabel.Web.Copying;

/// <summary>What was written.</summary>
/// <param name="Folder">Where, in full.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="Bytes">Their size.</param>
public sealed record CopyReport(string Folder, int Pages, long Bytes);
