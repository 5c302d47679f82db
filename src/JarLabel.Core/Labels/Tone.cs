namespace JarLabel.Core.Labels;

/// <summary>The tone bar: how many of five squares are filled, light to dark, and whether the grade holds its wax
/// (the last square is then ringed).</summary>
/// <param name="Filled">1 to 5.</param>
/// <param name="Waxy">True when the wax has not been taken out.</param>
public readonly record struct Tone(int Filled, bool Waxy);
