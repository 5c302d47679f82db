using JarLabel.Bench;
using JarLabel.Core;
using JarLabel.Core.Catalog;

namespace JarLabel.Cli;

/// <summary>One run of the program: the workbench, and how the answer is wanted.</summary>
/// <param name="Workbench">The shop at this moment.</param>
internal sealed record Session(Workbench Workbench)
{
    /// <summary>Shows on a terminal what is being waited for; null clears it.</summary>
    internal Action<string?> Status { get; init; } = _ => { };

    /// <summary>Reads the id of a solvent.</summary>
    internal Result<Solvent> Solvent(string text, string where) => Workbench.Catalog.Solvents.Named(text, where);

    /// <summary>Reads the id of a grade.</summary>
    internal Result<Grade> Grade(string text, string where) => Workbench.Catalog.Grades.Named(text, where);
}
