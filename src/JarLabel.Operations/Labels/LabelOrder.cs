namespace JarLabel.Operations.Labels;

/// <summary>What one label is to say and where it goes.</summary>
/// <param name="Text">All it may say.</param>
/// <param name="Title">The title inside the file.</param>
/// <param name="File">The file to write; null for the usual place.</param>
/// <param name="UsualName">The file's usual name in the shop's labels folder, by the design's id.</param>
internal sealed record LabelOrder(LabelText Text, string Title, string? File, Func<string, string> UsualName);
