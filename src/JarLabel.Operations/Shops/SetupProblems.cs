namespace JarLabel.Operations.Shops;

/// <summary>What can be wrong with the lines in which a shop settles its shelves and printers.</summary>
internal static class SetupProblems
{
    internal static Problem NotAShelf(string read, string where) =>
        new("JL250", $"Read {Quoted.Of(read)} as a shelf; write its name and how warm it is there, such as \"cellar 14 C\" or \"bench 68 F\".", where);

    internal static Problem Twice(string name, string where) =>
        new("JL251", $"Read {Quoted.Of(name)} twice; it is one, so write it once, such as \"cellar 14 C\" for a shelf.", where);

    internal static Problem NoShelf(string where) =>
        new("JL252", "Read no shelf; a shop has at least one, because jars must stand somewhere. Write its name and how warm it is there, such as \"main 20 C\".", where);

    internal static Problem NotAtOnce(string name, string where) =>
        new("JL253", $"Shelf {Quoted.Of(name)} is the only one yet, and not empty. Leave it in the list beside the new one, keep that, move what stands on it, then take it away.", where);
}
