namespace JarLabel.Render;

/// <summary>What a PDF says about itself. The same facts and pages always give the same bytes.</summary>
/// <param name="Title">The document's title, shown in a viewer's window.</param>
/// <param name="Moment">Creation time: the moment of the printed content, never the clock of the machine that draws.</param>
/// <param name="Creator">The program, with its version.</param>
public sealed record PdfFacts(string Title, DateTimeOffset Moment, string Creator = "JarLabel");
