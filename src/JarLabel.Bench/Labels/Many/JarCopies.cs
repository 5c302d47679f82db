namespace JarLabel.Bench.Labels.Many;

/// <summary>A jar and how many labels it gets.</summary>
/// <param name="Jar">The jar's number.</param>
/// <param name="Copies">How many, from 1.</param>
internal readonly record struct JarCopies(int Jar, int Copies);
