using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>Writes something down about a jar.</summary>
public static class NoteJar
{
    /// <summary>The jar with its note, or why not.</summary>
    public static Result<BenchOutcome> Do(Workbench bench, JarNumber number, string text)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return JarChange.Do(bench, number, null, _ => new Noted(bench.Now, text));
    }
}
