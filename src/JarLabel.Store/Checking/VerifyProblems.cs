namespace JarLabel.Store.Checking;

/// <summary>What a check of the whole shop can find.</summary>
internal static class VerifyProblems
{
    internal static Problem Database(string ledger, string line) =>
        new("JL460", $"The database says of itself: {line}", ledger);

    internal static Problem GuardGone(string ledger, string guard) =>
        new("JL461", $"The guard \"{guard}\", which keeps events from being changed or removed, is missing or was altered.", ledger);

    internal static Problem NumberUnused(SubjectKind kind, int first, int last) =>
        new("JL462", $"{Capital.Of(StoreProblems.Run(kind, first, last))} {(first == last ? "has" : "have")} no events, though later ones have: the events are gone.");

    internal static Problem NumberLeftOut(SubjectKind kind, int first, int last) =>
        new("JL455", $"{Capital.Of(StoreProblems.Run(kind, first, last))} {(first == last ? "was" : "were")} given out before an older backup was put in the ledger's place, and what happened to {(first == last ? "it" : "them")} is not in this ledger.");

    internal static Problem IndexDiffers(int jar) =>
        new("JL463", string.Create(CultureInfo.InvariantCulture, $"The list of jars does not show jar {jar} as its events tell it."));

    internal static Problem IndexHasMore(int jar) =>
        new("JL464", string.Create(CultureInfo.InvariantCulture, $"The list of jars shows jar {jar}, which has no events."));

    internal static Problem TotalsDiffer(string shelf) =>
        new("JL465", $"The total of the shelf \"{shelf}\" is not the sum of its jars.");

    internal static Problem SheetDiffers(int sheet) =>
        new("JL478", string.Create(CultureInfo.InvariantCulture, $"The list of label sheets does not show sheet {sheet} as its events tell it."));

    internal static Problem FileChanged(string path) =>
        new("JL466", Message.Of($"The file is not the one that was written: it was changed or damaged since. Write it again: a label with {new Remedy("label")}, a calendar or drawing with the step that wrote it."), path);

    internal static Problem FileGone(string path) =>
        new("JL467", $"The file {path} was written and is no longer there.", path);
}
