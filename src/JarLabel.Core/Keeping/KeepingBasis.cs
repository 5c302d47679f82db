namespace JarLabel.Core.Keeping;

/// <summary>On what an estimated use-by stands beside published claims.</summary>
/// <param name="Tests">Drying tests of this shop's jars of the same flakes and solvent.</param>
/// <param name="Related">Tested jars of other flakes or solvents.</param>
public sealed record KeepingBasis(int Tests, int Related);
