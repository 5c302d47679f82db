using JarLabel.Core;

namespace JarLabel.Bench.Cans;

/// <summary>What can go wrong with a can of the shop's own.</summary>
internal static class CanProblems
{
    internal static Problem NoId(string read, string where) => new(
        "JL223", Message.Of($"Read {Quoted.Of(read)}, of which no word for commands can be made; wanted are letters a to z, digits and hyphens, such as {new InputName("id", "green-can")}."), where);

    internal static Problem Taken(string id, string name) => new(
        "JL224", Message.Of($"There is an alcohol \"{id}\" already ({name}). What is in it stays as it was said, because jars may have been mixed from it; give this can another name, such as {new InputName("id", $"{id}-2")}."), "id");

    internal static Problem NotWritten(string file, string why) => new(
        "JL225", $"The can could not be written into the shop's catalog, which stays as it was: {why}", file);
}
