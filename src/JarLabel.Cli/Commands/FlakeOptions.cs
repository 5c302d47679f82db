using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Catalog;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say more about the flakes than their grade.</summary>
internal sealed class FlakeOptions
{
    private readonly Option<string> form = new("--form") { Description = "flake, button, seed or ground; else the grade's usual form.", HelpName = "form" };
    private readonly Option<string> date = new("--flake-date") { Description = "When the flakes were made or bought: 2025-10-01.", HelpName = "date" };

    internal void AddTo(Command command)
    {
        command.Add(form);
        command.Add(date);
    }

    internal LacForm? Form(Typed typed, Session session) => typed.Fact(form, session.Workbench.Catalog.Forms.Named);

    /// <summary>The flakes' own date, which does not lie ahead.</summary>
    internal DateOnly? Day(Typed typed, Session session)
    {
        var day = typed.Value(date, Words.Day);
        if (day > DateOnly.FromDateTime(session.Workbench.Now))
        {
            typed.Refuse(TypingProblems.FlakesFromTheFuture(typed.Text(date)!, date.Name));
        }

        return day;
    }
}
