namespace JarLabel.Operations.Steps;

/// <summary>Steps that pour jars into new ones.</summary>
internal static class PourSteps
{
    private static Input<IReadOnlyList<(JarNumber Jar, TakenText Amount)>> Parts => field ??= Input.Some<(JarNumber Jar, TakenText Amount)>("jar", "Jars to pour together", "1=200 mL", ReadPart)
        .Help("jar", "Two or more jars: 3 7-2, or a part of one as \"3=200 mL\" or 3=half.").Hint("two or more, parted by semicolons; a part of one as 3 = 200 mL").Argument();

    private static Input<IReadOnlyList<IReadOnlyList<TakenText>>> Into => field ??= Input.Many<IReadOnlyList<TakenText>>("into", "How much into each new jar", "200 mL,200 mL", (_, text, where) => TakenText.ReadList(text, where))
        .Help("volumes", "How much into each new jar: \"200 mL,200 mL\", \"3 x 200 mL\" or half; \"all\" for what is left.").Hint("200 mL, 200 mL, all; or 3 x 200 mL").Alone();

    private static Input<string?> Shelf => field ??= Shared.Shelf("The shelf it goes to; else the one it came from.", "the one it came from");

    private static Input<string?> By => field ??= Shared.By("Who pours", "Who pours.");

    private static Input<NewJar> New => field ??= Input.Group<NewJar>([Shared.NewContainer, Shelf, By, Shared.SeldomJob, Shared.Note, Shared.NewLabel], given => new NewJar(
        given.Get(Shared.NewContainer),
        given.Get(Shelf),
        given.Get(By),
        given.Get(Shared.SeldomJob),
        given.Get(Shared.Note),
        given.Get(Shared.NewLabel)));

    internal static Step Blend => field ??= Step.OfShop("blend", "Blend", "Pour jars together into a new one; it takes the shortest keeping of its parts, and its hazards are worked out for the whole.", [Parts, New],
        given => BlendJars.Do(given.Bench, given.Get(Parts), given.Get(New)).Then<Outcome>(outcome => Outcome.Changed(given.Bench, outcome))) with
    { Button = "Record the new jar and its label", WorksOut = true, Example = [new("jar", "1"), new("jar", "2")] };

    internal static Step Decant => field ??= Step.OfJar("decant", "Decant", "Pour a jar off into new ones, each with its own number and label.", [Into, New], given =>
    {
        TakenText[] amounts = [.. given.Get(Into).SelectMany(some => some)];
        return DecantJar.Do(given.Bench, Step.Jar(given), amounts, given.Get(New)).Then<Outcome>(outcome => new Outcome(JarAnswer.Decanted(given.Bench, outcome)) { Jar = outcome });
    }) with
    { Button = "Record the new jars and their labels", WorksOut = true, Example = [new("jar", "1"), new("into", "100 mL")] };

    private static Result<(JarNumber Jar, TakenText Amount)> ReadPart(Workbench bench, string text, string where)
    {
        if (text.Split('=', 2) is not [var jar, var amount])
        {
            return JarNumber.Read(text, where).Then<(JarNumber, TakenText)>(whole => (whole, default));
        }

        return JarNumber.Read(jar.Trim(), where).Then(number => TakenText.Read(amount, where).Then<(JarNumber, TakenText)>(taken => (number, taken)));
    }
}
