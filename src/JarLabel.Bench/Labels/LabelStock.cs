using JarLabel.Layout.Designs;
using JarLabel.Layout.Sheets;

namespace JarLabel.Bench.Labels;

/// <summary>The stock to print on and the design to print.</summary>
/// <param name="Sheet">The stock.</param>
/// <param name="Design">The design.</param>
public sealed record LabelStock(Sheet Sheet, Design Design);
