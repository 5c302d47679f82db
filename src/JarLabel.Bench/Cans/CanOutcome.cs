using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;

namespace JarLabel.Bench.Cans;

/// <summary>A can of the shop's own, with what follows from its data sheet.</summary>
/// <param name="Solvent">The alcohol as the catalog has it from now on.</param>
/// <param name="Hazards">What it is, at its worst where the sheet gives ranges.</param>
/// <param name="File">Where the shop keeps it.</param>
/// <param name="Cautions">What should be known of it.</param>
public sealed record CanOutcome(Solvent Solvent, HazardAssessment Hazards, string File, IReadOnlyList<Problem> Cautions);
