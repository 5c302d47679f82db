namespace JarLabel.Core.Jars;

/// <summary>What last made a jar another one than it was mixed as, for its label.</summary>
/// <param name="Word">thinned, thickened, blended.</param>
/// <param name="At">When.</param>
public sealed record LastChange(string Word, DateTime At);
