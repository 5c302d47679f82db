namespace JarLabel.Core.Keeping;

/// <summary>How many times faster jars age when they are 10 °C warmer, as far as a shop knows.</summary>
/// <param name="Q10">The middle of it.</param>
/// <param name="Low">Nine times of ten it lies between this</param>
/// <param name="High">and this.</param>
/// <param name="Set">True when the shop has settled it.</param>
public sealed record AgingEstimate(double Q10, double Low, double High, bool Set);
