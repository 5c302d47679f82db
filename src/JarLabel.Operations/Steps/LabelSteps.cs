namespace JarLabel.Operations.Steps;

/// <summary>Labels and cards of what is on record.</summary>
internal static class LabelSteps
{
    private static Input<IReadOnlyList<JarSpan>> Named => field ??= Input.Many<JarSpan>("jar", "Jars", "142", (_, text, where) => JarSpan.Read(text, where))
        .Change(one => one with { Help = "The jars: 142, 142-5, or a run of them, 150..160.", IsArgument = true, IsOptional = true, IsSubject = true });

    private static Input<IReadOnlyList<JarWish>?> Listed => field ??= Input.Optional<IReadOnlyList<JarWish>>("list", "List of jars", "class.csv", (text, _) => JarList.Read(text))
        .Help("file.csv", "Jars from a CSV file: columns jar, and copies where wanted.").Change(TypedOnly);

    private static Input<string?> Shelf => field ??= Input.Word("shelf", "All jars of the shelf", "main").Help("name", "All jars of this shelf.").Change(TypedOnly);

    private static Input<bool> All => field ??= Input.Flag("all", "All jars on all shelves").Help("All jars on all shelves.").Change(TypedOnly);

    private static Input<JarsWanted> Jars => field ??= Input.Group<JarsWanted>([Listed, Named, Shelf, All], given =>
        new JarsWanted([.. given.Get(Named).Select(span => new JarWish(span)), .. given.Get(Listed) ?? []], given.Get(Shelf), given.Get(All)));

    private static Input<SupplyNumber?> Bag => field ??= Input.Optional<SupplyNumber>("bag", "The bag", "3", SupplyNumber.ReadBag).Help("bag", "Instead of a jar: the bag of flakes.").Change(TypedOnly);

    private static Input<SupplyNumber?> Bottle => field ??= Input.Optional<SupplyNumber>("bottle", "The bottle", "2", SupplyNumber.ReadBottle).Help("bottle", "Instead of a jar: the bottle of alcohol.").Change(TypedOnly);

    internal static Step Label => field ??= Step.OfShop("label", "Label", "Print labels again, as the jars are now; or that of a bag or bottle.",
        [Jars, Shared.Copies, Bag, Bottle, Shared.LabelFile, Shared.Force, Shared.Label], Write) with
    {
        Button = "Write the label",
        Says = "The label again, as the jar is now.",
        WorksOut = true,
        NeedsNothing = true,
        Holds = OneThing,
        Example = [new("jar", "1")],
    };

    private static Input<LabelChoice> Card => field ??= Input.Group<LabelChoice>([CardStock], given =>
        new LabelChoice(Cards.Design, given.Get(CardStock) ?? (given.Bench.Rules == RuleSet.Clp ? "card-a6" : "card-101.6x152.4")));

    private static Input<string?> CardStock => field ??= Input.Optional<string>("sheet", "Card stock", "card-a6", ReadCardStock).Help("id", "The card stock; else card-a6 under clp, card-101.6x152.4 under osha.").More();

    internal static Step JarCard => field ??= Step.OfJar("card", "Card", "Print the jar card: recipe, thinning table, dates, history, all phrases.", [Card, Shared.LabelFile, Shared.Force, Shared.PrintTo],
        given => LabelJar.Do(given.Bench, Step.Jar(given), given.Get(Card), given.Get(Shared.LabelFile))
            .Then<Outcome>(outcome => new Outcome(JarAnswer.Labelled(given.Bench, outcome)) { Jar = outcome, Files = [outcome.Label!.File] })) with
    {
        Button = "Write the card",
        IsSeldom = true,
        Says = "Recipe, thinning table, dates, history and all phrases, to pin up.",
        WorksOut = true,
        NeedsNothing = true,
        Stock = Card,
    };

    private static Result<string> ReadCardStock(Workbench bench, string text, string where) =>
        LabelComposer.Open(bench).Then(composer => composer.Stock(text, where).Then(stock => composer.Design(Cards.Design, where).Then(card => card.Suits(stock.AreaAt(1))
            ? Result<string>.Of(stock.Id)
            : composer.Sheets().Then<string>(sheets => TypingProblems.NotCardStock(text, stock.Title, sheets.Where(sheet => card.Suits(sheet.AreaAt(1))).Select(sheet => sheet.Id), where)))));

    private static Field TypedOnly(Field one) => one with { IsTypedOnly = true };

    /// <summary>Whose labels are wanted is said in one way.</summary>
    private static IEnumerable<Problem> OneThing(Values given)
    {
        bool Said(params string[] names) => names.Any(name => given.Texts(name).Count > 0);
        if (((bool[])[Said("jar", "list", "shelf", "all"), Said("bag"), Said("bottle")]).Count(said => said) != 1)
        {
            yield return TypingProblems.OneLabel();
        }

        if (Said("copies") && Said("bag", "bottle"))
        {
            yield return TypingProblems.CopiesOfJarsOnly();
        }
    }

    private static Result<Outcome> Write(Values given)
    {
        var (bench, file) = (given.Bench, given.Get(Shared.LabelFile));
        var choice = given.Get(Shared.Label) with { Copies = given.Get(Shared.Copies) };
        if ((given.Get(Bag) ?? given.Get(Bottle)) is { } supply)
        {
            var kind = given.Get(Bag) is null ? SupplyKind.Bottle : SupplyKind.Bag;
            return SupplyOperations.Label(bench, kind, supply, choice, file).Then<Outcome>(outcome => new Outcome(SupplyAnswer.Of(bench, outcome)) { Files = outcome.Label is { } label ? [label.File] : [] });
        }

        var wanted = given.Get(Jars);
        return wanted.One is { } jar && choice.Copies == 1
            ? LabelJar.Do(bench, jar, choice, file).Then<Outcome>(outcome => new Outcome(JarAnswer.Labelled(bench, outcome)) { Jar = outcome })
            : LabelJars.Do(bench, wanted, choice, file, bench.Progress("labels")).Then<Outcome>(labels => new Outcome(LabelsAnswer.Of(bench, labels)) { Files = [labels.File] });
    }
}
