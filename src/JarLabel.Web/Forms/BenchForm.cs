using JarLabel.Bench;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Web.Forms;

/// <summary>A step at the bench as a form: the same operation as the command of that name.</summary>
/// <param name="Name">The command's name.</param>
/// <param name="Title">What is done: <c>Thin</c>.</param>
/// <param name="Button">What the button says.</param>
/// <param name="Fields">What is to be filled in; the jar is null where a new one is made.</param>
/// <param name="Do">Does it.</param>
internal sealed record BenchForm(
    string Name,
    string Title,
    string Button,
    Func<Workbench, Jar?, IReadOnlyList<Field>> Fields,
    Func<Workbench, JarNumber, Entry, Result<BenchOutcome>> Do)
{
    /// <summary>A sentence above the form; null for none.</summary>
    internal string? Says { get; init; }

    /// <summary>True when what follows is worked out and shown while one types.</summary>
    internal bool WorksOut { get; init; }

    /// <summary>True when nothing need be filled in, so that it can be shown at once what it would do.</summary>
    internal bool NeedsNothing { get; init; }
}
