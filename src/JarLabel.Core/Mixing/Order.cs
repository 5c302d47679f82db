using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>What somebody asks for: a cut and one amount, or two amounts from which the cut follows.</summary>
/// <param name="Cut">The strength wanted.</param>
/// <param name="Pour">Solvent to pour.</param>
/// <param name="Flakes">Flakes to use up.</param>
/// <param name="Makes">Finished liquid wanted.</param>
/// <param name="Fill">A container to fill, leaving its head space.</param>
public sealed record Order(PoundCut? Cut = null, Volume? Pour = null, Mass? Flakes = null, Volume? Makes = null, Volume? Fill = null);
