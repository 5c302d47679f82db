namespace JarLabel.Operations.Steps;

/// <summary>Thins a jar to a weaker cut.</summary>
internal static class ThinStep
{
    private static Input<PoundCut> To => field ??= Input.Of("to", "Thin to the cut", "1", (Reader<PoundCut>)CutText.Read)
        .Help("cut", "The cut wanted: 1.5, \"2 lb\", \"240 g/L\".").Hint("pounds per US gallon poured: 1, 1.5 lb, 120 g/L").Alone().Usual(UsualValues.Cuts);

    private static Input<Solvent?> Solvent => field ??= Input.Optional<Solvent>("solvent", "Alcohol", "ethanol-95", Choose.Solvent)
        .Help("id", "What to add; else the alcohol that most of it is.").More()
        .Choices(Choose.Solvents())
        .Change(one => one with { First = jar => jar.Contents.Solvents.Select(part => part.Solvent).FirstOrDefault() });

    internal static Step Step => field ??= Step.OnJar("thin", "Thin", "Thin a jar to a weaker cut: says what to add, records it, writes the new label.",
        [Solvent, Shared.Bottle, To, Shared.Temperature, Shared.OtherContainer, Shared.NewLabel], Do) with
    { Button = "Record it and its label", WorksOut = true };

    private static Result<JarOutcome> Do(Values given)
    {
        var request = new ThinRequest(Step.Jar(given), given.Get(To), given.Get(Solvent), given.Get(Shared.Temperature), given.Get(Shared.OtherContainer), given.Get(Shared.NewLabel))
        {
            Bottle = given.Get(Shared.Bottle),
        };
        return ThinJar.Do(given.Bench, request);
    }
}
