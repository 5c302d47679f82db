namespace JarLabel.Operations.Changing;

/// <summary>Writes something down about a jar.</summary>
public static class NoteJar
{
    /// <summary>The jar with its note, or why not.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, string text) =>
        JarChange.Do(bench, number, null, _ => new Noted(bench.Now, text));
}
