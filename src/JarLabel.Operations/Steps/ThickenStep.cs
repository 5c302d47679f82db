namespace JarLabel.Operations.Steps;

/// <summary>Thickens a jar to a stronger cut.</summary>
internal static class ThickenStep
{
    private static Input<PoundCut> To => field ??= Input.Of("to", "Thicken to the cut", "2", (Reader<PoundCut>)CutText.Read)
        .Help("cut", "The cut wanted: 1.5, \"2 lb\", \"240 g/L\".").Hint("pounds per US gallon poured: 2, 2.5 lb, 240 g/L").Alone().Usual(UsualValues.Cuts);

    private static Input<Grade?> Grade => field ??= Input.Optional<Grade>("grade", "Flakes", "garnet", Choose.Grade)
        .Help("id", "The flakes to add; else the grade that most of it is.").More()
        .Choices(Choose.Grades())
        .Change(one => one with { First = jar => jar.Contents.Resins.Select(part => part.Grade).FirstOrDefault() });

    internal static Step Step => field ??= Step.OnJar("thicken", "Thicken", "Thicken a jar to a stronger cut: says what flakes to add, records it, writes the new label.",
        [Grade, Shared.Bag, Shared.Form, Shared.FlakeDate, To, Shared.Temperature, Shared.OtherContainer, Shared.NewLabel], Do) with
    { Button = "Record it and its label", WorksOut = true };

    private static Result<JarOutcome> Do(Values given)
    {
        var request = new ThickenRequest(
            Step.Jar(given),
            given.Get(To),
            given.Get(Grade),
            given.Get(Shared.Form),
            given.Get(Shared.FlakeDate),
            given.Get(Shared.Temperature),
            given.Get(Shared.OtherContainer),
            given.Get(Shared.NewLabel))
        {
            Bag = given.Get(Shared.Bag),
        };
        return ThickenJar.Do(given.Bench, request);
    }
}
