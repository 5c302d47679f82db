namespace JarLabel.Core.Jars;

/// <summary>What can be wrong with the name of a jar or with what is asked of it.</summary>
internal static class JarProblems
{
    internal static Problem NotAJarNumber(string read, string where) =>
        new("JL141", $"Read {Quoted.Of(read)} as a jar; wanted is its number, alone or with its check digit, such as 142 or 142-5.", where);

    internal static Problem WrongCheckDigit(string read, JarNumber number, string where) =>
        new("JL142", $"Read {Quoted.Of(read)}, but the check digit does not fit the number: a digit was misread. If the number is right, the jar is {number}.", where);

    internal static Problem HyphenForARun(string read, string where) =>
        new("JL194", $"Read {Quoted.Of(read)}: behind a hyphen stands a check digit. A run of jars is written with two dots, such as {read.Replace("-", "..", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal)}.", where);

    internal static Problem NotARun(string read, string where) =>
        new("JL195", $"Read {Quoted.Of(read)} as a run of jars; wanted is the lowest number, two dots and the highest, such as 150..160, at most {JarSpan.Longest} numbers.", where);

    internal static Problem NotAnEvent(string read, string why, string where) =>
        new("JL401", $"Read {Quoted.Of(read)}, which is no event of a jar that this version knows: {why}", where);

    internal static Problem NeverRecorded(string member, string read, string why, string where) =>
        new("JL468", $"The event says {Quoted.Of(read)} as \"{member}\": {why}", where);

    internal static Problem NoLiquid(JarNumber number, JarEvent happened) =>
        new("JL469", string.Create(CultureInfo.InvariantCulture, $"After {happened.Name} jar {number} would hold what no jar holds: flakes and alcohol are there together or not at all, {PoundCut.Weakest} to {PoundCut.Strongest} lb to a gallon, and at most {EventBounds.MostAmount / 1e6:0} m3 of it."));

    internal static Problem NoSuchJar(JarNumber number) =>
        new("JL143", Message.Of($"There is no jar {number} in this shop's ledger; {new Remedy("shelf")} lists those there are."), "jar");

    internal static Problem NoBeginning(JarNumber number, JarEvent happened) =>
        new("JL480", $"The life of jar {number} begins with {happened.GetType().Name}; a jar begins when it is mixed, blended or decanted.");

    internal static Problem CannotFollow(JarNumber number, JarEvent happened) =>
        new("JL480", $"The life of jar {number} goes on with {happened.GetType().Name}, which cannot follow what was before.");

    internal static Problem Gone(Jar jar) => jar.TakenBack is null
        ? new("JL144", Message.Of($"Jar {jar.Number} is no longer on the shelf: it was {jar.Gone}. If that is wrong, {new Remedy("undo", new InputName("jar", $"{jar.Number}"))} takes the last step back."), "jar")
        : new("JL144", Message.Of($"Jar {jar.Number} is on no shelf: {jar.Gone}, so by the ledger nothing was ever in it, and its number is not used again. What is in the glass is entered anew: {new Remedy("mix")}."), "jar");

    internal static Problem NothingToUndo(JarNumber number) =>
        new("JL145", $"Everything that happened to jar {number} is already taken back; only what still stands can be undone.", "jar");

    internal static Problem NotSoMuch(JarNumber number, Volume wanted, Volume there, string where) =>
        new("JL146", $"Read {BenchAmount.Both(wanted)}, and jar {number} holds {BenchAmount.Both(there)}; take that or less, such as \"{BenchAmount.Metric(there / 2)}\", or \"all\".", where);

    internal static Problem PrintFreeBeforeTackFree(int printFree, int tackFree, string where) =>
        new("JL390", $"Read print-free after {printFree} min and tack-free after {tackFree} min; a film is free of tack before cloth leaves no print, so give as many minutes or more, such as {tackFree}.", where);

    internal static Problem DryBeforeTackFree(int dry, int tackFree, string where) =>
        new("JL390", $"Read dry after {dry} min and tack-free after {tackFree} min; drops stop sticking before they are dry, so give as many minutes or more, such as {tackFree}, or leave one of the two away.", where);

    internal static Problem NothingBesideFresh(string fresh, string own) =>
        new("JL391", Message.Of($"Minutes of a fresh batch say something only beside those of the jar's own drops; give {new InputName(own)} as well, or leave {new InputName(fresh)} away."), fresh);

    internal static Problem NotLikeFresh(double times) =>
        new("JL392", string.Create(CultureInfo.InvariantCulture, $"Read \"fresh\", and by the minutes the drops took {times:0.#} times as long as the fresh batch beside them. From {DropReadings.SlowTimes:0.#} times on that is slow: say \"slow\", or \"pass\" and let the minutes tell."), "verdict");

    internal static Problem OtherUndone(JarNumber number, Undone undone, string? last) =>
        new("JL480", $"In the life of jar {number} {undone.What} was taken back, but the last that stood was {last ?? "nothing"}.");

    internal static Problem KinFailed(FailedKin kin, IReadOnlyList<JarNumber> jars) => new("JL240", Message.Of(
        $"Jar {kin.Jar}, with liquid of the same batch as {(jars.Count == 1 ? "jar" : "jars")} {string.Join(", ", jars)}, failed its drying test on {DateWords.Of(kin.Day)}. Try a few drops of {(jars.Count == 1 ? "it" : "each")} on glass before any use. When {(jars.Count == 1 ? "they" : $"those of jar {jars[0]}")} dry hard: {new Remedy("test", new InputName("jar", $"{jars[0].Value}"), new InputName("verdict", "pass"))}{(jars.Count == 1 ? "" : ", and so for each")}."), "jar");
}
