using JarLabel.Core.Jars;

namespace JarLabel.Core.Supplies;

/// <summary>The step that last took from here for a jar was taken back: it never happened, so what it took is here again.</summary>
/// <param name="At">The moment.</param>
/// <param name="From">The jar.</param>
public sealed record PutBack(DateTime At, JarNumber From) : SupplyEvent(At);
