namespace JarLabel.Operations.Labels;

/// <summary>One label with its place and its file.</summary>
/// <param name="Path">The file's full path.</param>
/// <param name="Kept">The path as the ledger keeps it.</param>
/// <param name="Sha256">What the file holds, as a check sum; null on a dry run.</param>
/// <param name="Stock">On what and in which design.</param>
/// <param name="Place">The place on the sheet, from 1.</param>
/// <param name="Pressed">The checked page.</param>
internal sealed record PrintedLabel(string Path, string Kept, string? Sha256, LabelStock Stock, int Place, ComposedLabel Pressed);
