using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Catalog;
using JarLabel.Layout.Charts;

namespace JarLabel.Cli.Commands;

/// <summary>The file that a drawing is written to, and its paper.</summary>
internal static class DrawingOptions
{
    internal static Option<string> Out(string description) => new("--out") { Description = description, HelpName = "file" };

    internal static Option<string> PaperOption() => new("--paper") { Description = "Paper of the drawing: a4 or letter; else a4 under clp, letter under osha.", HelpName = "paper" };

    internal static Paper Of(Typed typed, Option<string> option, Session session) => Of(typed, option, session, Paper.A4, Paper.Letter);

    /// <summary>What was chosen of the two papers there are; else the one usual where the shop's rules hold.</summary>
    internal static T Of<T>(Typed typed, Option<string> option, Session session, T a4, T letter)
        where T : struct =>
        typed.Value(option, (text, where) => Words.Choice(text, where, new Dictionary<string, T>(StringComparer.OrdinalIgnoreCase) { ["a4"] = a4, ["letter"] = letter }))
        ?? (session.Workbench.Rules == RuleSet.Clp ? a4 : letter);
}
