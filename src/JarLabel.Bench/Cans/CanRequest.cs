using JarLabel.Core.Catalog;

namespace JarLabel.Bench.Cans;

/// <summary>A can of alcohol whose data sheet is at hand.</summary>
/// <param name="Name">What it is called at this bench: <c>the green can</c>.</param>
/// <param name="Contents">What section 3 of the sheet says is in it.</param>
/// <param name="Id">The word for it in commands; null to make one of the name.</param>
public sealed record CanRequest(string Name, StatedContents Contents, string? Id = null);
