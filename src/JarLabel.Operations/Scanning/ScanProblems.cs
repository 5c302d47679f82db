namespace JarLabel.Operations.Scanning;

/// <summary>What can be wrong with a code that was scanned.</summary>
internal static class ScanProblems
{
    internal static Problem NotOurs(string read) =>
        new("JL184", $"Read {Quoted.Of(read)}, which is no code of a jar. If it comes from a jar's label, a part of it was misread: type the number printed on the label, such as 142-5.", "what");

    internal static Problem OtherShop(string read, LabelCode code) =>
        new("JL185", $"Read {Quoted.Of(read)}, which names a jar {code.Jar}, but this shop never printed that label: it is another shop's, or the code was altered. To look at this shop's own jar of that number type {code.Jar}.", "what");

    internal static Problem OutOfDate(Jar jar, int revision) =>
        new("JL186", Message.Of($"This label is out of date: it speaks of revision {revision}, and the jar is at revision {jar.Revision}. {(jar.OnShelf ? Message.Of($"Print the new one with {new Remedy("label", new InputName("jar", $"{jar.Number.Value}"))} and take the old one off.") : "Take it off.")}"));

    internal static Problem LastLabelOutOfDate(Jar jar, int revision) =>
        new("JL186", Message.Of($"The label on jar {jar.Number} is out of date: it speaks of revision {revision}, and the jar is at revision {jar.Revision}. Print the new one with {new Remedy("label", new InputName("jar", $"{jar.Number.Value}"))} and take the old one off."));

    internal static Problem Newer(Jar jar, int revision) =>
        new("JL216", $"This label is newer than this ledger: it speaks of revision {revision}, and here jar {jar.Number} is at revision {jar.Revision}. It was printed from another copy of the ledger, or the ledger was restored from an older one. Trust the label and the other copy; what is said here is older.");

    internal static Problem NewerOrOtherShop(string read, LabelCode code, Jar jar) =>
        new("JL185", $"Read {Quoted.Of(read)}, which names a jar {code.Jar} at revision {code.Revision}, and this ledger, where it is at revision {jar.Revision}, never printed that label: it is another shop's, or from another or newer copy of this ledger. To look at this ledger's own jar of that number type {code.Jar}.", "what");

    internal static Problem NotOnShelf(Jar jar) => jar.TakenBack is null
        ? new("JL187", Message.Of($"In the ledger jar {jar.Number} is {jar.Gone}. What is in a glass with this label is unknown: do not use it, or {new Remedy("undo", new InputName("jar", $"{jar.Number}"))} if the ledger is wrong."))
        : new("JL187", Message.Of($"In the ledger jar {jar.Number} was never filled: {jar.Gone}. What is in a glass with this label is unknown: do not use it. If you know what it is, {new Remedy("mix")} enters it anew, with a new label."));

    internal static Problem SupplyGone(Supply supply) => supply.TakenBack
        ? new("JL190", Message.Of($"In the ledger the entry of {supply.Kind.Word()} {supply.Number} was taken back. If it is there, {new Remedy($"{supply.Kind.Word()} add")} enters it anew, with a new label."))
        : new("JL190", Message.Of($"In the ledger {supply.Kind.Word()} {supply.Number} is empty or was discarded. If there is something in it, {new Remedy($"{supply.Kind.Word()} left", new InputName(supply.Kind.Word(), $"{supply.Number}"))} says how much."));

    internal static Problem OtherShopsSupply(string read, SupplyCode code) =>
        new("JL185", $"Read {Quoted.Of(read)}, which names a {code.Kind.Word()} {code.Number}, but this shop never printed that label: it is another shop's, or the code was altered. To look at this shop's own type \"{code.Kind.Word()} {code.Number}\".", "what");

    internal static Problem NoSuchPhoto(string file) =>
        new("JL188", "There is no such picture; give a photo of labels such as photo.jpg, a jar's number such as 142-5, or - to type codes.", file);

    internal static Problem PhotoUnreadable(string file, string why) => new("JL188", $"The picture cannot be read: {why}", file);
}
