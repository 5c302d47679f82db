namespace JarLabel.Tests.Operations;

/// <summary>Strains a jar through a cloth: the worked example of DEVELOPERS.md.</summary>
internal static class StrainStep
{
    private static Input<Mass> Left => field ??= Input.Of<Mass>("left", "Left in the cloth", "6 g", MassText.Read)
        .Help("weight", "What stayed in the cloth, dry: \"6 g\".").Hint("dry: 6 g");

    internal static Step Step => field ??= Step.OnJar("strain", "Strain", "Strain a jar through a cloth, and say what stayed in it.", [Left], Do);

    private static Result<JarOutcome> Do(Values given)
    {
        var left = given.Get(Left);
        if (left > Mass.FromGrams(100))
        {
            return TooMuch(left);
        }

        return NoteJar.Do(given.Bench, Step.Jar(given), $"strained; {left.Grams:0.#} g left in the cloth");
    }

    private static Problem TooMuch(Mass left) => new(
        "JL110", Message.Of($"Read {left.Grams:0.#} g, which no cloth holds; weigh again for {new InputName("left", "6 g")}, or take it out with {new Remedy("use", new("jar", "142"), new("volume", "all"))}."), "left");
}
