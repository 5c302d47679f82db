using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Catalog;
using JarLabel.Layout.Charts;

namespace JarLabel.Cli.Commands;

/// <summary>The file that a drawing is written to, and its paper.</summary>
internal static class DrawingOptions
{
    private static readonly Dictionary<string, Paper> Papers = new(StringComparer.OrdinalIgnoreCase) { ["a4"] = Paper.A4, ["letter"] = Paper.Letter };

    internal static Option<string> Out(string description) => new("--out") { Description = description, HelpName = "file" };

    internal static Option<string> PaperOption() => new("--paper") { Description = "Paper of the drawing: a4 or letter; else a4 under clp, letter under osha.", HelpName = "paper" };

    internal static Paper Of(Typed typed, Option<string> option, Session session) =>
        typed.Value(option, (text, where) => Words.Choice(text, where, Papers)) ?? (session.Workbench.Rules == RuleSet.Clp ? Paper.A4 : Paper.Letter);
}
