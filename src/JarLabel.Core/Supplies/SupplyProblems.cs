namespace JarLabel.Core.Supplies;

/// <summary>What can be wrong with the name of a bag or bottle or with what is asked of it.</summary>
internal static class SupplyProblems
{
    internal static Problem NotANumber(SupplyKind kind, string read, string where) =>
        new("JL154", Message.Of($"Read {Quoted.Of(read)} as a {kind.Word()}; wanted is its number, alone or with its check digit, such as 12 or {SupplyNumber.From(12)}. {new Remedy($"{kind.Word()} list")} shows them."), where);

    internal static Problem WrongCheckDigit(SupplyKind kind, string read, SupplyNumber number, string where) =>
        new("JL155", $"Read {Quoted.Of(read)}, but the check digit does not fit the number: a digit was misread. If the number is right, the {kind.Word()} is {number}.", where);

    internal static Problem NoSuch(SupplyKind kind, SupplyNumber number) =>
        new("JL156", Message.Of($"There is no {kind.Word()} {number} in this shop's ledger; {new Remedy($"{kind.Word()} list")} shows them, and {new Remedy($"{kind.Word()} add")} adds one."), kind.Word());

    internal static Problem Gone(Supply supply, string where) => supply.TakenBack
        ? new("JL157", Message.Of($"The entry of {supply.Kind.Word()} {supply.Number} was taken back, so by the ledger it never came. If it is there, enter it anew: {new Remedy($"{supply.Kind.Word()} add")}."), where)
        : supply.Discarded
        ? new("JL157", Message.Of($"{Capital.Of(supply.Kind.Word())} {supply.Number} was discarded. If it is still there, take that back first: {new Remedy($"{supply.Kind.Word()} undo", new InputName(supply.Kind.Word(), $"{supply.Number}"))}."), where)
        : new("JL157", Message.Of($"By the ledger {supply.Kind.Word()} {supply.Number} is empty. If there is some in it, say how much: {Measure(supply)}."), where);

    internal static Problem MeasuredSince(Supply supply, DateTime measured) => new("JL229", Message.Of(
        $"{Capital.Of(supply.Kind.Word())} {supply.Number} was measured on {DateWords.Of(DateOnly.FromDateTime(measured))}, after that: {supply.Shown(supply.Rest)} stand as measured. If it holds something else now, say how much: {Measure(supply)}."), supply.Kind.Word());

    /// <summary>Saying what it holds, with an amount for an example.</summary>
    private static Remedy Measure(Supply supply) =>
        new($"{supply.Kind.Word()} left", new(supply.Kind.Word(), $"{supply.Number}"), new(supply.Kind.Amount(), supply.Kind == SupplyKind.Bag ? "120 g" : "200 mL"));

    internal static Problem TakenByJar(Supply supply, JarNumber jar) =>
        new("JL226", Message.Of($"The last that happened to {supply.Kind.Word()} {supply.Number} is that some of it went into jar {jar}. Only where that jar was never made is that taken back, and at the jar: {new Remedy("undo", new InputName("jar", $"{jar}"))}. {Otherwise(supply)}"), supply.Kind.Word());

    /// <summary>How something wrong from before a drawing is put right: it is said anew.</summary>
    private static Message Otherwise(Supply supply) => supply.Kind == SupplyKind.Bag
        ? Message.Of($"What was said wrongly before is said anew: how much there is with {Measure(supply)}, how a pinch dissolves with {new Remedy("bag test", new InputName("bag", $"{supply.Number}"), new InputName("pinch", "all"))}; jars that were dated by a bad pinch keep the sooner dates.")
        : Message.Of($"What was said wrongly before is said anew: {Measure(supply)}.");

    internal static Problem NothingToUndo(Supply supply) =>
        new("JL227", $"Everything that was said of {supply.Kind.Word()} {supply.Number} is already taken back, even that it came.", supply.Kind.Word());

    internal static Problem NotAnEvent(string read, string why, string where) =>
        new("JL481", $"Read {Quoted.Of(read)}, which is no event of a bag or bottle that this version knows: {why}", where);

    internal static Problem CannotFollow(SupplyKind kind, SupplyNumber number, SupplyEvent happened) =>
        new("JL482", $"The life of {kind.Word()} {number} goes on with {happened.Name}, which cannot follow what was before.");

    internal static Problem OtherThing(Supply supply, string held, string wanted) =>
        new("JL158", Message.Of($"{Capital.Of(supply.Kind.Word())} {supply.Number} holds {held}, and {wanted} was asked for. Take another {supply.Kind.Word()}; or, where that is what is meant, {new InputName(supply.Kind == SupplyKind.Bag ? "grade" : "solvent", supply.Holds) { Words = held }}."), supply.Kind.Word());

    /// <summary>That the flakes of a bag are of another day than was said.</summary>
    internal static Problem OtherDate(Bag bag, DateOnly said) =>
        new("JL241", Message.Of($"Bag {bag.Number} is dated {DateWords.Of(bag.Made)}, and {DateWords.Of(said)} was said of its flakes. Leave {new InputName("flake-date")} out; where the bag's own date is wrong, {RightDate(bag)}"), "flake-date");

    /// <summary>How a bag gets the right date: entered anew, after its entry was taken back, or with what is left where something happened to it since.</summary>
    private static Message RightDate(Bag bag) => bag.Last is BagAdded
        ? Message.Of($"{new Remedy("bag undo", new InputName("bag", $"{bag.Number.Value}"))} takes its entry back, to be made anew.")
        : Message.Of($"enter what is left of it with the right date: {new Remedy("bag add", new InputName("grade", bag.Grade), new InputName("mass", string.Create(CultureInfo.InvariantCulture, $"{bag.Left.Grams:0.#} g")))}; and {new Remedy("bag left", new InputName("bag", $"{bag.Number.Value}"), new InputName("weight", "empty"))} for this one.");

    internal static Problem BagTooSmall(Bag bag, Mass needed, Recipe possible) =>
        new("JL159", Message.Of($"It needs {BenchAmount.Both(needed)} of flakes, and bag {bag.Number} holds {BenchAmount.Both(bag.Left)}. {CouldMake(possible)}"), "bag");

    internal static Problem BottleTooSmall(Bottle bottle, Volume needed, Recipe possible) =>
        new("JL159", Message.Of($"It needs {BenchAmount.Both(needed)} of alcohol, and bottle {bottle.Number} holds {BenchAmount.Both(bottle.Left)}. {CouldMake(possible)}"), "bottle");

    internal static Problem TooLittleToThin(Bottle bottle, Volume needed, PoundCut? possible) =>
        new("JL159", $"It needs {BenchAmount.Both(needed)} of alcohol, and bottle {bottle.Number} holds {BenchAmount.Both(bottle.Left)}.{To("thins", possible)}", "bottle");

    internal static Problem TooLittleToThicken(Bag bag, Mass needed, PoundCut? possible) =>
        new("JL159", $"It needs {BenchAmount.Both(needed)} of flakes, and bag {bag.Number} holds {BenchAmount.Both(bag.Left)}.{To("thickens", possible)}", "bag");

    internal static Problem MoreThanBought(Supply supply, double read) =>
        new("JL483", Message.Of($"Read {supply.Shown(read)} as what is left in {supply.Kind.Word()} {supply.Number}, which held {supply.Shown(supply.Full)} when it came. Give at most that, or enter what was bought since as its own: {new Remedy($"{supply.Kind.Word()} add")}."), supply.Kind.Amount());

    internal static Problem NotYetMade(Bag bag, DateOnly day) =>
        new("JL484", Message.Of($"Bag {bag.Number} holds flakes of {DateWords.Of(bag.Made)}, and this step is dated {DateWords.Of(day)}, before there were any. Take another bag, or a later {new InputName("at")}."), "bag");

    internal static Problem NotYetBought(Bottle bottle, DateOnly day) =>
        new("JL235", Message.Of($"Bottle {bottle.Number} is of {DateWords.Of(bottle.Since)}, and this step is dated {DateWords.Of(day)}, before it was bought or opened: one of the two days is wrong. If it is that of this step, take it back and enter it with the right one."), "bottle");

    internal static Problem Unfit(Bag bag) =>
        new("JL393", Message.Of($"A pinch of bag {bag.Number} swelled to a gel on {DateWords.Of(bag.Test!.Day)}: what is mixed from it will not dry hard, so nothing is. Take another bag. If the pinch was wrong, try another and tell how it dissolved: {new Remedy("bag test", new InputName("bag", $"{bag.Number.Value}"), new InputName("pinch", "all"))}."), "bag");

    private static Message CouldMake(Recipe possible) => Message.Of(
        $"With what is there the same cut makes {BenchAmount.Both(possible.Makes)} from {BenchAmount.Both(possible.Pour)} of alcohol and {BenchAmount.Both(possible.Flakes)} of flakes: {new InputName("pour", string.Create(CultureInfo.InvariantCulture, $"{possible.Pour.Milliliters:0.#} mL"))}.");

    private static string To(string verb, PoundCut? possible) => possible is { } cut ? $" All of it {verb} the jar to {CutWords.Of(cut)}." : "";
}
