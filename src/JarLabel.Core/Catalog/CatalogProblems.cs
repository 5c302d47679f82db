namespace JarLabel.Core.Catalog;

/// <summary>What can be wrong with the catalog, or with a word that should be in it.</summary>
internal static class CatalogProblems
{
    /// <summary>The code of every fault in the form of a catalog file.</summary>
    internal const string Form = "JL202";

    internal static Problem UnknownWord(string kind, string typed, string? where, IReadOnlyList<string> candidates, IEnumerable<string> ids) => candidates.Count > 1
        ? new("JL201", Message.Of($"Read {kind} {Quoted.Of(typed)}, which could be {string.Join(", ", candidates)}: write which of them it is. {Listed(kind)}Known are: {string.Join(", ", ids)}."), where)
        : new("JL201", $"Read {kind} {Quoted.Of(typed)}, which is not in the catalog.{Nearest.Question(candidates.SingleOrDefault())} Known are: {string.Join(", ", ids)}.", where);

    private static Message Listed(string kind) => kind is "grade" or "solvent" ? Message.Of($"{new Remedy($"{kind}s")} says what each is. ") : "";

    internal static Problem DoubledId(string file, string id) =>
        new("JL203", $"The id or alias \"{id}\" stands on more than one row of {file}; each may stand once.", $"{file} ({id})");

    internal static Problem UnknownReference(string file, string id, string member, string found, IEnumerable<string> known) =>
        new("JL204", $"The row \"{id}\" names {member} \"{found}\", which no row has as its id.{Nearest.Asked(found, known)}", $"{file} ({id})");

    internal static Problem UnknownFile(string file, IEnumerable<string> known) =>
        new("JL205", $"A catalog has no file of this name; it may have: {string.Join(", ", known)}.", file);

    internal static Problem MadeOfItself(string file, string id) =>
        new("JL206", $"The solvent \"{id}\" is made of itself, directly or through another solvent.", $"{file} ({id})");

    internal static Problem NoDensity(string file, string id, string substance) =>
        new("JL207", $"The solvent \"{id}\" holds \"{substance}\", which has no density; give it \"kilogramsPerCubicMeterAt20C\" in "
            + "substances.json, or state the can by weight, where a trace needs none.", $"{file} ({id})");

    internal static Problem SecondFile(string path, string name) =>
        new("JL208", $"A shop can have one {name}; this is the second. Put all its rows into one file.", path);

    internal static Problem ComputedClass(string file, string id, string hazardClass) =>
        new("JL209", $"The row \"{id}\" names the hazard \"{hazardClass}\", which is computed: give \"flashCelsius\" and \"boilsCelsius\", or a row "
            + "in \"acuteToxicity\", instead.", $"{file} ({id})");

    internal static Problem NoLimit(string file, string id, string hazardClass) =>
        new("JL210", $"The row \"{id}\" names the hazard \"{hazardClass}\", for which no general limit is built in; add \"atLeastPercent\", the share "
            + "from which a mixture has it, such as 1.", $"{file} ({id})");

    internal static Problem BurnsWithoutFlashPoint(string file, string id) =>
        new("JL211", $"The row \"{id}\" has an explosive limit but no \"flashCelsius\": without it the label would not warn of fire.", $"{file} ({id})");
}
