using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;

namespace JarLabel.Cli.Commands;

/// <summary><c>card</c>: the jar card, a recipe to pin up with every hazard phrase on it.</summary>
internal static class CardCommand
{
    private static readonly Argument<string> Jar = JarArgument.One();
    private static readonly Option<string> Sheet = new("--sheet") { Description = "The card stock; else card-a6 under clp, card-101.6x152.4 under osha.", HelpName = "id" };

    internal static Command Create(Runner runner) =>
        runner.Runs(new Command("card", "Print the jar card: recipe, thinning table, dates, history, all phrases.") { Jar, Sheet, LabelCommand.Out, SharedOptions.Force, PrintTo.To }, Run, Choice);

    private static LabelChoice Choice(Typed typed, Session session) => new(Cards.Design, typed.Text(Sheet) ?? (session.Workbench.Rules == RuleSet.Clp ? "card-a6" : "card-101.6x152.4"));

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var number = typed.Needed(Jar, JarNumber.Read);
        return typed.Then(() => LabelJar.Do(session.Workbench, number, Choice(typed, session), LabelCommand.FileOf(typed))
            .Then<Answer>(outcome => JarAnswer.Labelled(session.Workbench, outcome)));
    }
}
