namespace JarLabel.Core.Jars;

/// <summary>What can be wrong with the name of a jar or with what is asked of it.</summary>
internal static class JarProblems
{
    internal static Problem NotAJarNumber(string read, string where) =>
        new("JL141", $"Read {Quoted.Of(read)} as a jar; wanted is its number, alone or with its check digit, such as 142 or 142-5.", where);

    internal static Problem WrongCheckDigit(string read, JarNumber number, string where) =>
        new("JL142", $"Read {Quoted.Of(read)}, but the check digit does not fit the number: a digit was misread. If the number is right, the jar is {number}.", where);

    internal static Problem NotAnEvent(string read, string why, string where) =>
        new("JL401", $"Read {Quoted.Of(read)}, which is no event of a jar that this version knows: {why}", where);

    internal static Problem NoSuchJar(JarNumber number) =>
        new("JL143", $"There is no jar {number} in this shop's ledger. ", "JAR");

    internal static Problem NoBeginning(JarNumber number, JarEvent happened) =>
        new("JL480", $"The life of jar {number} begins with {happened.GetType().Name}; a jar begins when it is mixed.");

    internal static Problem CannotFollow(JarNumber number, JarEvent happened) =>
        new("JL480", $"The life of jar {number} goes on with {happened.GetType().Name}, which cannot follow what was before.");
}
