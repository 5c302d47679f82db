using System.CommandLine;
using JarLabel.Bench.Supplies;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Supplies;

namespace JarLabel.Cli.Commands;

/// <summary>The bag and the bottle that a step is worked from.</summary>
internal static class SupplyOptions
{
    internal static Option<string> Bag() => new("--bag") { Description = "The bag the flakes come from (\"jarlabel bag list\"); its grade and date are known then.", HelpName = "bag" };

    internal static Option<string> Bottle() => new("--bottle") { Description = "The bottle the alcohol comes from (\"jarlabel bottle list\").", HelpName = "bottle" };

    /// <summary>The grade in a bag; nothing where the bag itself could not be read, which is told already.</summary>
    internal static Grade GradeIn(SupplyNumber? bag, Typed typed, Session session) =>
        bag is not { } number ? default! : Taken(typed, SupplyBook.GradeIn(session.Workbench, number));

    /// <summary>The alcohol in a bottle; nothing where the bottle itself could not be read, which is told already.</summary>
    internal static Solvent SolventIn(SupplyNumber? bottle, Typed typed, Session session) =>
        bottle is not { } number ? default! : Taken(typed, SupplyBook.SolventIn(session.Workbench, number));

    private static T Taken<T>(Typed typed, Result<T> result)
        where T : class => typed.Take(result, out var value) ? value! : default!;
}
