using JarLabel.Store.Sheets;

namespace JarLabel.Bench.Printing;

/// <summary>What a recorded step put on paper's way: the places it took and the files it wrote.</summary>
/// <param name="Places">Places of label stock, in order.</param>
/// <param name="Files">Full paths, in order.</param>
public sealed record StepTrace(IReadOnlyList<SheetPlace> Places, IReadOnlyList<string> Files);
