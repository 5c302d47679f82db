namespace JarLabel.Operations.Typing;

/// <summary>What can be wrong with a command line before any of its values is looked at.</summary>
public static class TypingProblems
{
    /// <summary>The code of what must be given and was not.</summary>
    internal const string NotGiven = "JL106";

    /// <summary>Something that must be given was not.</summary>
    public static Problem Missing(string name, string example) =>
        new(NotGiven, Message.Of($"The option {new InputName(name)} is missing; for example {new InputName(name, example)}."), name);

    /// <summary>A field that must be filled in is empty.</summary>
    public static Problem Empty(string name, string label, string example) => new(NotGiven, $"{label} is needed; for example {example}.", name);

    /// <summary>A field that must be chosen, in a shop that has nothing to choose from.</summary>
    internal static Problem NothingToChoose(string name, string label, Remedy adds) =>
        new(NotGiven, Message.Of($"{label} is needed, and there is none to choose here; {adds} enters one."), name);

    /// <summary>Two or more that must be given were not: one whole line for an example.</summary>
    internal static Problem WholeLine(Remedy line) => new(NotGiven, Message.Of($"A whole line is {line}."));

    /// <summary>A word on the line that nobody knows.</summary>
    /// <param name="unknown">The word.</param>
    /// <param name="meant">What was probably meant, where something comes near.</param>
    /// <param name="help">The command that helps.</param>
    public static Problem Syntax(string unknown, string? meant, string help) =>
        Syntax($"Unrecognized command or argument {Quoted.Of(unknown)}.{Nearest.Question(meant)}", help);

    /// <summary>The line itself cannot be read.</summary>
    /// <param name="message">What is wrong with it.</param>
    /// <param name="help">The command that helps.</param>
    public static Problem Syntax(string message, string help) => new("JL107", $"{message} \"{help}\" shows what there is.");

    /// <summary>A value of several words without quotation marks.</summary>
    /// <param name="value">The first of them, as it was meant.</param>
    /// <param name="line">The line as it was meant.</param>
    public static Problem ForgottenQuotes(string value, string line) =>
        new("JL107", $"A value of several words stands in quotes, such as {Quoted.Of(value)}; put it in quotes: {Quoted.Visible(line)}");

    /// <summary>Something that must stand on the line does not.</summary>
    /// <param name="missing">What is missing, as it is written.</param>
    /// <param name="line">A whole line, in quotation marks.</param>
    public static Problem NotOnTheLine(IReadOnlyList<string> missing, string line) =>
        new("JL107", $"{string.Join(" and ", missing)} {(missing.Count == 1 ? "is" : "are")} missing. A whole line is {line}.");

    /// <summary>An option without its value.</summary>
    public static Problem NoValue(string option, string example) =>
        new("JL107", $"{option} needs a value; for example {CommandLine.Said(option, example)}.");

    /// <summary>The same thing said twice.</summary>
    internal static Problem SaidTwice(string name, string one, string other) =>
        new("JL107", Message.Of($"Read {Quoted.Of(one)} and {Quoted.Of(other)} for {new InputName(name)}; give it once."), name);

    /// <summary>Help of what there is not.</summary>
    internal static Problem NoSuchHelp(string read, string? meant, IEnumerable<string> topics) => new(
        "JL108", $"Read {Quoted.Of(read)}; there is help for every command, such as mix, and for: {string.Join(", ", topics)}.{Nearest.Question(meant)}", "WHAT");

    /// <summary>The answer did not get out.</summary>
    /// <param name="reason">Why not.</param>
    /// <param name="kept">What is kept all the same, in a sentence.</param>
    public static Problem NotSaid(string reason, string kept) =>
        new("JL183", $"The answer could not be written: {reason}. {kept}");

    /// <summary>None of a few words.</summary>
    public static Problem NotAChoice(string read, string option, IEnumerable<string> choices) =>
        new("JL108", $"Read {Quoted.Of(read)}; allowed are: {string.Join(", ", choices)}.", option);

    /// <summary>No date.</summary>
    public static Problem NotAMoment(string read, string option) =>
        new("JL109", $"Read {Quoted.Of(read)} as a date; write year-month-day, with a time if it matters, such as 2026-03-09, \"2026-03-09 14:30\" or yesterday.", option);

    /// <summary>A date that no jar of this shop can have.</summary>
    public static Problem MomentTooFar(string read, int first, int last, string option) =>
        new("JL109", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}; dates from {first}-01-01 to {last}-12-31 are read, such as 2026-03-09."), option);

    /// <summary>No whole number within its bounds.</summary>
    public static Problem NotAWholeNumber(string read, int least, int most, int such, string option) =>
        new("JL110", $"Read {Quoted.Of(read)}; a whole number from {least} to {most} is wanted, such as {such}.", option);

    /// <summary>No number within its bounds.</summary>
    public static Problem NotANumber(string read, double least, double most, double such, string option) =>
        new("JL110", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}; a number from {least} to {most} is wanted, such as {such}."), option);

    /// <summary>A percentage where a plain number is wanted.</summary>
    internal static Problem NoPercentage(string read, double least, double most, double such, string option) =>
        new("JL110", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}; here a plain number from {least} to {most} is wanted, not a percentage, such as {such}."), option);

    /// <summary>A number that could be two.</summary>
    internal static Problem TwoNumbers(string read, double value, string option) =>
        new("JL110", string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}, whose point could part thousands or decimals; write {value * 1000:0} or {value:0.###}."), option);

    /// <summary>No fraction.</summary>
    public static Problem NotAFraction(string read, string such, string option) =>
        new("JL110", $"Read {Quoted.Of(read)}; a number above 0 and below 1 is wanted, such as {such}.", option);

    /// <summary>No part of a blend.</summary>
    public static Problem NotAPart(string read, string option) =>
        new("JL113", $"Read {Quoted.Of(read)}; a part is written volume@cut, such as \"200 mL@2\".", option);

    /// <summary>Nothing that can be dialled.</summary>
    internal static Problem NotATelephone(string read, string where) =>
        new("JL231", $"Read {Quoted.Of(read)} as a telephone number; labels print it as the one to call, so it needs its digits, such as \"+49 30 19240\".", where);

    /// <summary>A word that is no amount.</summary>
    /// <param name="told">What is told of it where only a volume is wanted.</param>
    /// <param name="read">The word.</param>
    /// <param name="words">The words there are.</param>
    internal static Problem NoAmount(Problem told, string read, IEnumerable<string> words) =>
        told with { Text = $"Read {Quoted.Of(read)} as how much; wanted is a volume such as \"100 mL\", a part such as half, a third, a quarter or 40 %, or all.{Nearest.Asked(read.Trim(), words)}" };

    /// <summary>Nothing between two commas.</summary>
    public static Problem AmountLeftOut(string read, string where) =>
        new("JL369", $"Read {Quoted.Of(read)}, in which an amount is left out at a comma; write each with its unit, such as \"200 mL,0.5 L,all\".", where);

    /// <summary>Two that exclude each other.</summary>
    internal static Problem OneOfTwo(string one, string other) =>
        new("JL114", Message.Of($"Give either {new InputName(one)} or {new InputName(other)}, and not both."), one);

    /// <summary>Flakes younger than the batch.</summary>
    public static Problem FlakesFromTheFuture(string read, string option) =>
        new("JL115", $"Read {Quoted.Of(read)} as the flakes' date, which lies after the mixing; give the day they were made or bought, such as 2025-10-01.", option);

    /// <summary>No shelf with its temperature.</summary>
    public static Problem NotAShelf(string read, string where) =>
        new("JL116", $"Read {Quoted.Of(read)}; a shelf is written name=temperature, such as \"cellar=16 C\" or \"bench=68F\", or \"cellar=none\" to take it away.", where);

    /// <summary>No code at all.</summary>
    public static Problem NothingTyped() =>
        new("JL117", "Read no code; type or scan codes or jar numbers, one a line, such as 142-5, then end the input.", "-");

    /// <summary>What evaporates, said twice or not at all.</summary>
    /// <param name="both">True when it was said both ways.</param>
    internal static Problem OneSpell(bool both) => new(
        "JL168",
        Message.Of($"{(both ? "Read both an amount to evaporate and a job; say one of them: " : "Read nothing that evaporates; say ")}the alcohol, such as {new InputName("evaporate", "250 mL")}, or the job, such as {new InputName("cut", "2")} {new InputName("coats", "3")} {new InputName("area", "14 sq ft")}."),
        "evaporate");

    /// <summary>No one thing to label was named.</summary>
    public static Problem OneLabel() =>
        new("JL119", Message.Of($"Say whose label: a jar such as {new Remedy("label", new InputName("jar", "142"))}, or a bag such as {new InputName("bag", "3")}, or a bottle such as {new InputName("bottle", "2")}; one of them."), "jar");

    /// <summary>A list beside what the list says itself.</summary>
    internal static Problem NotBesideList(string name) =>
        new("JL196", Message.Of($"The list says this row by row, so {new InputName(name)} cannot stand beside {new InputName("list")}; give the list a column for it."), name);

    /// <summary>What only a list takes.</summary>
    internal static Problem OnlyWithList(string name) =>
        new("JL198", Message.Of($"{new InputName(name)} goes with {new InputName("list")}; a single batch gets one label, and {new Remedy("label", new("jar", "142"), new InputName("copies", "3"))} prints more."), name);

    /// <summary>Copies of what gets one label.</summary>
    public static Problem CopiesOfJarsOnly() =>
        new("JL197", Message.Of($"A bag or bottle gets one label at a time; {new InputName("copies")} is for jars. Give the command again for another."), "copies");

    /// <summary>No stock for a card.</summary>
    internal static Problem NotCardStock(string read, string title, IEnumerable<string> stock, string where) =>
        new("JL477", $"Read {Quoted.Of(read)} ({title}), on which a card has no room; card stock: {string.Join(", ", stock)}.", where);

    /// <summary>A date in the future.</summary>
    public static Problem DayAhead(string read, string where) =>
        new("JL120", $"Read {Quoted.Of(read)}, which lies ahead; give a day that has been, such as 2025-10-01.", where);

    /// <summary>A rehearsal of what cannot be rehearsed.</summary>
    public static Problem NoDryRun(string command) =>
        new("JL130", Message.Of($"{new Remedy(command)} has no rehearsal; leave {new InputName("dry-run")} away, and take a folder that you can throw away."), "dry-run");

    /// <summary>A printer's name and address are not to be told apart.</summary>
    public static Problem NotAPrinter(string read, string where) =>
        new("JL169", $"Read {Quoted.Of(read)}; a printer is written name=address, such as \"bench=ipp://192.168.1.30/ipp/print\", or \"bench=none\" to forget it.", where);

    /// <summary>A name of a file in a folder that is gone.</summary>
    public static Problem NoCurrentFolder(string read) =>
        new("JL486", $"Read {Quoted.Of(read)} as a file of the folder you are in, which is no longer there. Go to one that is, such as with \"cd ~\", or name the file in full.", read);

    /// <summary>No name of a folder.</summary>
    public static Problem NotAFolder(string where) => new("JL118", "Read nothing as a folder; give its name, such as my-shop, or leave it out for the shop's own.", where);

    /// <summary>No name of a file.</summary>
    public static Problem NotAFile(string where) => new("JL118", "Read nothing as a file; give its name, such as shop.jsonl.", where);
}
