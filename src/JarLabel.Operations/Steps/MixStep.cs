namespace JarLabel.Operations.Steps;

/// <summary>Mixes a batch.</summary>
internal static class MixStep
{
    private static Input<Grade> Grade => field ??= Shared.Grade.Alone().ElseFrom(Bag, SupplyBook.GradeIn);

    private static Input<Solvent> Solvent => field ??= Shared.Solvent.ElseFrom(Bottle, SupplyBook.SolventIn);

    // A new jar is often begun from them, so they are not folded away.
    private static Input<SupplyNumber?> Bag => field ??= Shared.Bag.Change(one => one with { IsMore = false });

    private static Input<SupplyNumber?> Bottle => field ??= Shared.Bottle.Change(one => one with { IsMore = false });

    private static Input<PoundCut?> Cut => field ??= Input.Optional<PoundCut>("cut", "Cut", "1.5", CutText.Read)
        .Help("cut", "Pounds of flakes per US gallon poured: 1.5, \"2 lb\", \"240 g/L\", \"2 oz/pt\".").Hint("pounds per US gallon poured: 1.5, 2 lb, 240 g/L").Usual(UsualValues.Cuts);

    private static Input<Volume?> Pour => field ??= Input.Optional<Volume>("pour", "Alcohol to pour", "350 mL", VolumeText.Read).In(UsualUnits.Volumes)
        .Help("volume", "Alcohol to pour: \"350 mL\", \"1 1/2 pt\".").Hint("350 mL, 1 1/2 pt").Usual(UsualValues.Pours);

    private static Input<Mass?> Flakes => field ??= Input.Optional<Mass>("flakes", "Flakes to use", "113 g", MassText.Read).In(UsualUnits.Masses)
        .Help("weight", "Flakes to use: \"4 oz\", \"113 g\". With --pour the cut follows.").Hint("4 oz, 113 g");

    private static Input<Volume?> Makes => field ??= Input.Optional<Volume>("makes", "Finished liquid", "1 pt", VolumeText.Read).In(UsualUnits.Volumes)
        .Help("volume", "Finished liquid wanted: \"1 pt\".").Hint("1 pt, 0.5 L");

    private static Input<Volume?> Fill => field ??= Input.Optional<Volume>("fill", "A jar to fill", "500 mL", VolumeText.Read).In(UsualUnits.Volumes)
        .Help("volume", "A container to fill, leaving its head space: \"500 mL\".").Hint("with head space: 500 mL").Usual(UsualValues.Jars);

    internal static Input<BatchRequest> Batch => field ??= Input.Group<BatchRequest>([Cut, Pour, Flakes, Makes, Fill],
        given => new BatchRequest(given.Get(Cut), given.Get(Pour), given.Get(Flakes), given.Get(Makes), given.Get(Fill)));

    /// <summary>What one may know of a batch.</summary>
    internal static IReadOnlyList<KnownFields> Amounts { get; } =
    [
        new("alcohol to pour", "pour") { With = ["cut"] }, new("flakes to use", "flakes") { With = ["cut"] }, new("finished liquid", "makes") { With = ["cut"] }, new("a jar to fill", "fill") { With = ["cut"] },
        new("alcohol and flakes: the cut follows", "pour", "flakes"),
    ];

    private static Input<Container> Container => field ??= Input.Group<Container>([Shared.NewContainer, Fill],
        given => given.Get(Shared.NewContainer) is { Holds: null } unsaid ? unsaid with { Holds = given.Get(Fill) } : given.Get(Shared.NewContainer));

    private static Input<string?> Shelf => field ??= Shared.Shelf("The shelf it goes to; else the shop's first.", "the shop's first");

    private static Input<string?> By => field ??= Shared.By("Who mixes", "Who mixed it.");

    /// <summary>All but the label: what a row of a list says too.</summary>
    internal static Input<MixRequest> Request => field ??= Input.Group<MixRequest>(
        [Grade, Solvent, Bag, Bottle, Batch, Shared.Temperature, Container, Shared.Form, Shared.FlakeDate, Shelf, By, Shared.SeldomJob, Shared.Note],
        given => new MixRequest(
            given.Get(Grade),
            given.Get(Solvent),
            given.Get(Batch),
            given.Get(Container),
            given.Get(Shared.Form),
            given.Get(Shared.FlakeDate),
            given.Get(Shared.Temperature),
            given.Get(Shelf),
            given.Get(By),
            given.Get(Shared.SeldomJob),
            given.Get(Shared.Note))
        {
            Bag = given.Get(Bag),
            Bottle = given.Get(Bottle),
        });

    internal static Step Step => field ??= Step.OfShop("mix", "Mix a jar", "Mix a batch: --grade, --solvent, --cut and one of --pour, --flakes, --makes, --fill; or a list of batches.",
        [Request, Shared.NewLabel], Do) with
    {
        Button = "Record the jar and its label",
        WorksOut = true,
        Known = Amounts,
        Holds = given => given.TryRead(Batch, out var batch) && RecipeSolver.Unsaid(batch) is { } unsaid ? [unsaid] : [],
        Example = [new("grade", "garnet"), new("solvent", "ethanol-95"), new("cut", "1.5"), new("pour", "350 mL"), new("container", "500 mL")],
        Instead = new(MixListStep.List.Field.Name, () => MixListStep.Step, TypingProblems.NotBesideList, TypingProblems.OnlyWithList),
    };

    private static Result<Outcome> Do(Values given)
    {
        var request = given.Get(Request) with { Label = given.Get(Shared.NewLabel) };
        return MixJar.Do(given.Bench, request).Then<Outcome>(outcome => new Outcome(JarAnswer.Mixed(given.Bench, outcome)) { Jar = outcome });
    }
}

/// <summary>Mixes a list of batches.</summary>
internal static class MixListStep
{
    internal static Input<string> List => field ??= Shared.File("list", "List of batches", "class.csv")
        .Help("file.csv", "Many batches from a CSV file, one row a jar; its columns are called like these options.").Change(one => one with { IsTypedOnly = true });

    private static Input<string?> Out => field ??= Shared.Out("The PDF to write with --list; else one in the shop's labels folder.");

    private static Input<int> Copies => field ??= Shared.Copies.Change(one => one with { IsTypedOnly = true });

    internal static Step Step => field ??= Step.OfShop("mix", "Mix a list of jars", "Mix a list of batches.", [Shared.NewLabel, List, Copies, Out, Shared.Force], Do);

    private static Result<Outcome> Do(Values given)
    {
        var (bench, copies) = (given.Bench, given.Get(Copies));
        var label = given.Get(Shared.NewLabel) is { } wanted ? wanted with { Copies = copies } : null;
        return MixList.Do(bench, given.Get(List), label, given.Get(Out), bench.Progress("labels")).Then<Outcome>(mixed => new Outcome(LabelsAnswer.Of(bench, mixed)) { Files = mixed.Labels is { } printed ? [printed.File] : [] });
    }
}
