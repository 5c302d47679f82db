using JarLabel.Bench.Labels;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>The jar that something is poured into; what is null comes from where it was poured from.</summary>
/// <param name="Container">What it is.</param>
/// <param name="Shelf">The shelf it goes to.</param>
/// <param name="By">Who pours.</param>
/// <param name="Job">What for.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record NewJar(Container Container, string? Shelf = null, string? By = null, string? Job = null, string? Note = null, LabelChoice? Label = null);
