namespace JarLabel.Layout.Marks;

/// <summary>A QR code.</summary>
/// <param name="Box">The design box it came from.</param>
/// <param name="X">Left edge of the first module (the quiet zone lies outside), mm.</param>
/// <param name="Y">Top edge of the first module, mm.</param>
/// <param name="Module">Side of one module, mm.</param>
/// <param name="Modules">The dark modules.</param>
public sealed record QrMark(string Box, double X, double Y, double Module, QrModules Modules) : Mark(Box);
