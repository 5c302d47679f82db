using JarLabel.Bench;

namespace JarLabel.Cli;

/// <summary>One run of the program: the workbench, and how the answer is wanted.</summary>
/// <param name="Workbench">The shop at this moment.</param>
internal sealed record Session(Workbench Workbench)
{
    /// <summary>Shows on a terminal what is being waited for; null clears it.</summary>
    internal Action<string?> Status { get; init; } = _ => { };
}
