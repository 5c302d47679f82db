namespace JarLabel.Operations;

/// <summary>What can go wrong at the bench beside the batch itself.</summary>
internal static class OperationProblems
{
    private const int MostNamed = 12;

    internal static Problem FolderUnreadable(string folder, string why) =>
        new("JL221", $"The shop's files in this folder cannot be read: {why} Give the folder back its read permission, or take it away.", folder);

    internal static Problem ShelfUnknown(IReadOnlyList<string> shelves) => new("JL243", Message.Of(
        $"This shop does not know how warm {(shelves.Count == 1 ? "shelf" : "shelves")} {string.Join(", ", shelves.Select(Quoted.Of))} {(shelves.Count == 1 ? "is" : "are")}: jars that stand or stood there are dated as if it had been 20 °C, and never later than on record. Say it, as of the day since when: {new Remedy("shop set", new InputName("setting", "shelf"), new InputName("value", $"{shelves[0]}=18 C"))}."), "shelf");

    internal static Problem LabelStillWarns(JarNumber jar, string what) => new("JL244", Message.Of(
        $"The label on jar {jar} still says {what}, which is so no longer. {new Remedy("label", new InputName("jar", $"{jar.Value}"))} prints one of the jar as it is."), "jar");

    internal static Problem FileAstray(string file) =>
        new("JL242", "Nothing reads this file where it lies. A sheet goes into layouts/sheets, a label design into layouts/labels, and each catalog file straight into catalog.", file);

    internal static Problem NotListedHere(IReadOnlyList<string> names) => new("JL429", Message.Of(
        $"This shop does not list {string.Join(", ", names.Take(MostNamed).Select(Quoted.Of))}{(names.Count > MostNamed ? $" and {names.Count - MostNamed} more" : "")}, so jars of it answer for the worst it may be. An export holds what happened and not the shop's own cans and grades: copy the folder catalog of the other shop here, or take its {new Remedy("backup")} instead and {new Remedy("restore")} it."), "file");

    internal static Problem StoragePassed(StorageLimit limit) =>
        new("JL176", $"{limit.Says} ({limit.Rule}; a workplace rule, and the local fire code comes first: at home ask the fire department what a dwelling may keep.)", "container");

    internal static Problem StoragePassedBy(StorageLimit limit, IReadOnlyList<string> all) =>
        new("JL176", $"{Capital.Of(string.Join(", ", all.Take(MostNamed)))}{(all.Count > MostNamed ? " and more" : "")}: {limit.Says} ({limit.Rule}; a workplace rule, and the local fire code comes first: at home ask the fire department what a dwelling may keep.)");

    internal static Problem ShelfOverLimit(string shelf, StorageLimit limit) =>
        new("JL177", $"Shelf {Quoted.Of(shelf)} holds more than {limit.Amount}. {limit.Says} ({limit.Rule}; a workplace rule, and the local fire code comes first: at home ask the fire department what a dwelling may keep.)", "shelf");

    internal static Problem FarBehind(DateTime at, DateTime clock) =>
        new("JL234", Message.Of($"This is dated {DateWords.Of(DateOnly.FromDateTime(at))}, and the clock says {DateWords.Of(DateOnly.FromDateTime(clock))}: more than ten years back. If that was a slip, take the step back and enter it with the right day; what is worked out from this one, such as a use-by, is wrong too."), "at");

    internal static Problem FarAhead(DateTime at, DateTime clock) =>
        new("JL234", Message.Of($"This is dated {DateWords.Of(DateOnly.FromDateTime(at))}, and the clock says {DateWords.Of(DateOnly.FromDateTime(clock))}: more than a year ahead. If that was a slip, take the step back and enter it with the right day; no use-by is learned from it."), "at");

    internal static Problem LaterSteps(JarNumber jar, DateTime at) =>
        new("JL236", $"Jar {jar} is shown as it is now, with what happened to it after {DateWords.Of(at)}; only its state and what is said of its age are those of that moment.", "at");

    internal static Problem LaterList(DateTime at) =>
        new("JL236", $"The jars are listed as they stand now, with all that happened since {DateWords.Of(at)}; only their state and what is due are those of that moment.", "at");

    internal static Problem NoJarDesign(string read, string what) =>
        new("JL232", Message.Of($"The design {Quoted.Of(read)} is made for {what}: a jar's cut, dates and dangers have no place on it. Take one made for jars, such as {new InputName("design", "wide")}, or leave it to the stock; {new Remedy("designs")} shows all."), "design");

    internal static Problem PictureOfManyPages(string file, int pages) =>
        new("JL331", $"{pages} pages do not fit one picture; write a PDF, such as {Path.GetFileNameWithoutExtension(file)}.pdf, or ask for less at once, such as one shelf or one jar.", file);

    internal static Problem UnknownFileKind(string file) =>
        new("JL332", $"Read {Quoted.Of(file)} as the file to write; its ending says what it becomes: .pdf, .png or .svg, such as label.pdf.", "out");

    internal static Problem ChangedSince(JarHistory history) =>
        new("JL150", $"Jar {history.Jar.Number} has been worked on since this was opened; the last step is: {HistoryWords.Of(history.Events.Last(e => e.Event is not Labelled).Event)}. It holds {(history.Jar.Contents.IsEmpty ? "nothing more" : BenchAmount.Both(history.Jar.Contents.Liquid))} now. Look whether this is still right, and send it again if it is.", "jar");

    internal static Problem ChangedSince(Supply supply, bool metric) => new(
        "JL150", $"{Capital.Of(supply.Kind.Word())} {supply.Number} has been worked on since this was opened. What is left now: {supply.Standing(metric)}{(supply.Last is { } last ? $"; the last that is said of it is {SupplyLastWords.Of(last)}" : "")}. Look whether this is still right, and send it again if it is.", supply.Kind.Word());

    internal static Problem WentOn(JarNumber jar, JarNumber made) =>
        new("JL147", Message.Of($"This step filled jar {made}, and jar {jar} has been worked on since. First take that back at jar {jar}: {new Remedy("undo", new InputName("jar", $"{jar}"))}."), "jar");

    internal static Problem LabelsOfBefore(string what, int labels, int first) =>
        new("JL239", Message.Of($"{CountWords.Of(labels, "jar")} on the shelves {(labels == 1 ? "has a label" : "have labels")} printed before, with {what} of then, and so may notices and bottles. Print them anew, such as {new Remedy("label", new InputName("jar", $"{first}"))}."), "value");

    internal static Problem FilledToo(JarNumber from, JarNumber to) =>
        new("JL228", Message.Of($"Jar {to} was filled from jar {from} at the same moment and still is. If that is to be taken back too, do so once more at jar {from}: {new Remedy("undo", new InputName("jar", $"{from}"))}."), "jar");

    /// <summary>A blend of fewer than two.</summary>
    /// <param name="read">How many were named.</param>
    /// <param name="there">Two that stand on shelves; fewer where there are no two.</param>
    internal static Problem TooFewJars(int read, IReadOnlyList<JarNumber> there) => new("JL148", Message.Of(
        $"Read {read} jar{(read == 1 ? "" : "s")}; a blend needs two or more different ones, {(there is [var one, var other, ..]
            ? Message.Of($"such as {new Remedy("blend", new InputName("jar", $"{one.Value}"), new InputName("jar", $"{other.Value}"))}")
            : Message.Of($"and so many do not stand on the shelves; {new Remedy("mix")} makes one"))}."), "jar");

    internal static Problem TakenMeanwhile(string kind, SupplyNumber number) =>
        new("JL189", Message.Of($"Somebody took from {kind} {number} meanwhile, and it no longer holds enough; {new Remedy($"{kind} list")} shows what is left."), kind);

    internal static Problem UseByMoved(Jar jar, DateOnly now, bool labelled) =>
        new("JL124", Message.Of($"{(jar.Doubts.Shortened ? "Its flakes were found to be going off:" : jar.FlakesCleared ? "What was said against its flakes was taken back:" : "By this shop's drying tests")} jar {jar.Number} should be used by {DateWords.Estimate(now)}, {(now < jar.Dates.UseBy ? "sooner" : "later")} than {DateWords.Estimate(jar.Dates.UseBy)} on record. {(labelled ? "Its label is out of date: " : "")}{new Remedy("label", new InputName("jar", $"{jar.Number.Value}"))} dates it anew.{(now < jar.Dates.UseBy ? " Until then the sooner date counts." : "")}"), "jar");

    internal static Problem UseByOfShelfMoved(IReadOnlyList<(JarNumber Jar, DateOnly UseBy)> jars, bool labels) =>
        new("JL124", Message.Of($"By this shop's drying tests, or by what was found of flakes, the use-by has moved{(labels ? " and labels are out of date" : "")}: {string.Join(", ", jars.Take(MostNamed).Select(j => $"jar {j.Jar} now {DateWords.Estimate(j.UseBy)}"))}{(jars.Count > MostNamed ? " and more" : "")}. {new Remedy("label", new InputName("jar", $"{jars[0].Jar.Value}"))} dates a jar anew."));

    internal static Problem TestBeforeMixing(JarNumber jar, DateTime mixed, DateTime read) =>
        new("JL125", Message.Of($"Read {DateWords.Of(read)} as the moment of the test, and jar {jar} was mixed only {DateWords.Of(mixed)}; a test comes after the mixing, such as {At(mixed.AddDays(30))}."), "at");

    internal static Problem OutOfOrder(JarNumber jar, JarEvent before, DateTime read) =>
        new("JL357", Message.Of($"Read {DateWords.Of(read)} as the moment of this step, before \"{HistoryWords.Of(before)}\" of {DateWords.Of(before.At)}, which it builds on. Give a later moment, such as {At(before.At.AddDays(1))}{(before is IBeginning ? "" : Message.Of($", or take that step back first: {new Remedy("undo", new InputName("jar", $"{jar.Value}"))}"))}."), "at");

    internal static Problem ClockBehind(JarNumber jar, JarEvent before, DateTime clock) =>
        new("JL374", Message.Of($"The clock says {DateWords.Of(clock)}, before \"{HistoryWords.Of(before)}\" of {DateWords.Of(before.At)}, the last step of jar {jar}. Nothing is lost: this step is recorded under that moment. {SetRight(before.At, clock, new("undo", new InputName("jar", $"{jar.Value}")))}"), "at");

    internal static Problem OutOfOrder(Supply supply, SupplyEvent before, DateTime read) =>
        new("JL375", Message.Of($"Read {DateWords.Of(read)} as the moment of this step, before the last step of {supply.Kind.Word()} {supply.Number}, of {DateWords.Of(before.At)}. Give a later moment, such as {At(before.At.AddDays(1))}, or take that step back first: {TakeBack(supply, before)}."), "at");

    internal static Problem ClockBehind(Supply supply, SupplyEvent before, DateTime clock) =>
        new("JL374", Message.Of($"The clock says {DateWords.Of(clock)}, before the last step of {supply.Kind.Word()} {supply.Number}, of {DateWords.Of(before.At)}. Nothing is lost: this step is recorded under that moment. {SetRight(before.At, clock, TakeBack(supply, before))}"), "at");

    /// <summary>What to do where the clock is behind the last step: by hours, as when it was set back, or by days, as when a wrong one was said.</summary>
    private static Message SetRight(DateTime last, DateTime clock, Remedy undo) => Workbench.IsAhead(last, clock)
        ? Message.Of($"If the clock is right, that step is dated ahead: take back what is recorded under that moment, the last of it first, and enter it with the right day: {undo}. If not, set the clock right.")
        : Message.Of($"Set the clock right, or say when it was with {new InputName("at")}.");

    /// <summary>Taking back the last step of a bag or bottle, which is done at the jar where a jar took from it.</summary>
    private static Remedy TakeBack(Supply supply, SupplyEvent last) =>
        last is ITaking taking ? new("undo", new InputName("jar", $"{taking.Jar.Value}")) : new($"{supply.Kind.Word()} undo", new InputName(supply.Kind.Word(), $"{supply.Number.Value}"));

    internal static Problem OtherHead(string kind, string at, string name, DateTime happened) =>
        new("JL470", string.Create(CultureInfo.InvariantCulture, $"The line says {Quoted.Of(kind)} at {Quoted.Of(at)}, and the event in it {name} at {happened:yyyy-MM-ddTHH:mm:ss}; they are always the same."));

    internal static Problem PassAfterFailure(JarNumber jar) =>
        new("JL126", Message.Of($"A test of jar {jar} on the same day or earlier failed, and this one passed: they contradict each other. Both are kept; what the shop learns from counts the failure. If that was a slip, {new Remedy("undo", new InputName("jar", $"{jar.Value}"))} and record the right one."), "verdict");

    internal static Problem TestsFailed(IReadOnlyList<(JarNumber Jar, DateOnly Day)> jars) => jars is [var (jar, day)]
        ? new("JL140", Message.Of($"Jar {jar} failed its drying test on {DateWords.Of(day)}: the label says so in place of a use-by. Do not use it as a finish; when a later test passes, {new Remedy("test", new InputName("jar", $"{jar.Value}"), new InputName("verdict", "pass"))} and print it again."), "jar")
        : new("JL140", $"These jars failed their drying test, and their labels say so in place of a use-by: {Named(jars, j => $"{j.Jar} on {DateWords.Of(j.Day)}")}. Do not use them as a finish.", "jar");

    internal static Problem LabelStillPromises(Jar jar, bool inDoubt = false) => jar.FailedOn is null
        ? new("JL359", Message.Of($"The label on jar {jar.Number} still gives a use-by, as if it were not in doubt. {new Remedy("label", new InputName("jar", $"{jar.Number.Value}"))} prints one that says to test it first."), "jar")
        : new("JL359", Message.Of($"The label on jar {jar.Number} {(inDoubt ? "does not say yet that its test failed" : "still gives a use-by")}. {new Remedy("label", new InputName("jar", $"{jar.Number.Value}"))} prints one that says the test failed; {new Remedy("discard", new InputName("jar", $"{jar.Number.Value}"))} takes the jar off the shelf."), "jar");

    internal static Problem DrawnOtherwise(IReadOnlyList<string> labels, IReadOnlyList<string> signs) =>
        new("JL363", $"The label typeface has no {Named(signs, Quoted.Of)}, read in words on record of {Named(labels, name => name)}; \"{OwnWords.StandIn}\" is printed for each. Nothing on record is changed.");

    /// <summary>A later moment that would do.</summary>
    private static InputName At(DateTime moment) => new("at", moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    private static string Named<T>(IReadOnlyList<T> all, Func<T, string> name) => string.Join(", ", all.Take(MostNamed).Select(name)) + (all.Count > MostNamed ? " and more" : "");

    internal static Problem DemoNeedsRoom(string folder) =>
        new("JL199", "There is something in this folder already, and a demo needs one that is new or empty, such as \"demo-shop\".", folder);

    internal static Problem KeptFile(string file) => new("JL531", "The file was written all the same; print it again, or open it and print it at actual size.", file);

    internal static Problem PlacesFree(string file, int sheet, IReadOnlyList<int> places) =>
        new("JL532", Message.Of($"All else is recorded. Place {string.Join(", ", places)} of sheet {sheet} is free again; when all is well, {new Remedy("label")} prints the label anew. The file that was to be printed is kept."), file);

    internal static Problem PlacesUnsure(string file, int sheet, IReadOnlyList<int> places) =>
        new("JL533", Message.Of($"All else is recorded. Place {string.Join(", ", places)} of sheet {sheet} stays taken, for paper may have come out; if none did: {new Remedy("sheet back", [new("sheet", $"{sheet}"), .. places.Select(place => new InputName("place", $"{place}"))])}."), file);

    internal static Problem FileNotThere(string file) => new("JL534", "The file to be printed is not in its place yet, or cannot be read.", file);

    internal static Problem NothingLeftToDecant(JarNumber jar, int place) =>
        new("JL358", Message.Of($"Amount {place} takes all that jar {jar} holds, and more stands behind it. What takes all can only be the last, such as {new InputName("into", "100 mL,all")}."), "into");

    internal static Problem NothingToDecant() =>
        new("JL149", Message.Of($"Read no amount; say how much goes into each new jar, such as {new InputName("into", "200 mL,200 mL")}."), "into");

    internal static Problem NoJarsToLabel(string? shelf) =>
        new("JL334", shelf is null ? Message.Of($"There is no jar on any shelf to print a label for; {new Remedy("mix")} makes one.") : $"There is no jar on shelf {Quoted.Of(shelf)} to print a label for.", shelf is null ? "all" : "shelf");

    internal static Problem NoJarsInRun(JarSpan span, string where) =>
        new("JL335", Message.Of($"Of the jars {span.First.Value}..{span.Last.Value} none is on a shelf; {new Remedy("shelf")} lists those that are."), where);

    internal static Problem JarNotOnShelf(JarNumber jar, Jar? known, string where) => known switch
    {
        null => new("JL336", Message.Of($"There is no jar {jar} in this shop's ledger; {new Remedy("shelf")} lists those there are."), where),
        { TakenBack: not null } => new("JL337", $"Jar {jar} is on no shelf: {known.Gone}, so there is nothing to label.", where),
        _ => new("JL337", Message.Of($"Jar {jar} is no longer on the shelf: it was {known.Gone}. If that is wrong, {new Remedy("undo", new InputName("jar", $"{jar}"))} takes the last step back."), where),
    };

    internal static Problem TooManyLabels(long labels) =>
        new("JL333", string.Create(CultureInfo.InvariantCulture, $"That would be {labels} labels; at most {LabelJars.MostLabels} at once. Print one shelf or a run of jars at a time, such as 1..5000."), "copies");

    internal static Problem InUsualMargin(string file, IReadOnlyList<int> places, double missing, double margin) =>
        new("JL338", Message.Of($"Place{(places.Count == 1 ? "" : "s")} {Runs(places)}: what is printed reaches {missing:0.#} mm into the outer {margin:0.#} mm of the paper, which many desktop printers cannot print. Measure left, top and pitch again; if they are right, try one sheet, or leave those places out with {new InputName("start")}."), file);

    internal static Problem OfSetting(Problem problem, string setting) =>
        problem with { Text = Message.Of($"{problem.Text} The shop settled on it: {new Remedy("shop set", new InputName("setting", setting), new InputName("value", "ID"))} chooses another, \"none\" leaves it to the program.") };

    internal static Problem WithExample(Problem problem, string setting, string such) =>
        problem with { Text = Message.Of($"{problem.Text} For example: {new Remedy("shop set", new InputName("setting", setting), new InputName("value", such))}.") };

    internal static Problem ShelfNotEmpty(string shelf, int jars, int bottles, Remedy moves) => new("JL426", Message.Of(
        $"On shelf {Quoted.Of(shelf)} stand {jars} jar{(jars == 1 ? "" : "s")} and {bottles} bottle{(bottles == 1 ? "" : "s")}. First move them, such as {moves}."), "value");

    internal static Problem LastShelf(string shelf) =>
        new("JL427", Message.Of($"Shelf {Quoted.Of(shelf)} is the only one, and jars must stand somewhere. First make another, such as {new Remedy("shop set", new InputName("setting", "shelf"), new InputName("value", "cellar=16C"))}."), "value");

    internal static Problem WarmthForgotten(string shelf) =>
        new("JL428", $"How warm shelf {Quoted.Of(shelf)} was is forgotten with it: drying tests of jars that once stood there are from now on treated as if it had been 20 °C, and no use-by of theirs becomes later.", "value");

    internal static Problem FitsOnStock(Problem problem, IReadOnlyList<string> sheets) =>
        problem with { Text = Message.Of($"{problem.Text} All of it has room on {string.Join(", ", sheets)} ({new InputName("sheet")}).") };

    // 1-3, 7, 9: runs of numbers, short.
    private static string Runs(IReadOnlyList<int> numbers) => string.Join(", ", numbers.Index().GroupBy(n => n.Item - n.Index, n => n.Item)
        .Select(run => run.Count() == 1 ? run.First().ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{run.First()}-{run.Last()}")));

    internal static Problem ChartNotWritten(string file, string why) =>
        new("JL339", $"The drawing cannot be written to {Quoted.Of(file)}: {why} Name a file in a folder that is there and may be written to, such as {Path.GetFileName(file)}.", "out");

    internal static Problem NoKindToDraw() =>
        new("JL361", Message.Of($"There is no kind to draw: no jar of that kind was tested yet. Name one with {new InputName("grade")} and {new InputName("solvent")}, such as {new InputName("grade", "garnet")} {new InputName("solvent", "ethanol-95")}, to draw what published claims say."), "out");

    internal static Problem OneKindAPicture(string file, IReadOnlyList<LifeClass> kinds) =>
        new("JL362", Message.Of($"A picture holds one kind, and {string.Join(", ", kinds)} were asked for. Name one with {new InputName("grade")} and {new InputName("solvent")}, or write a PDF, such as {Path.GetFileNameWithoutExtension(file)}.pdf, with a page for each."), "out");
}
