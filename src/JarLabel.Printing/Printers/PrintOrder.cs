namespace JarLabel.Printing.Printers;

/// <summary>What is to be printed: a PDF whose pages have the paper's exact size. Copies are pages of it.</summary>
/// <param name="Title">The job's name, as the printer shows it.</param>
/// <param name="Pdf">The document.</param>
/// <param name="Width">Width of the paper, mm.</param>
/// <param name="Height">Height of the paper, mm.</param>
/// <param name="User">Who prints.</param>
public sealed record PrintOrder(string Title, byte[] Pdf, double Width, double Height, string User);
