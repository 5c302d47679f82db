using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Air;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc purge</c>: how long to air a room, or what is left after a time.</summary>
internal static class CalcPurgeCommand
{
    private static readonly Option<string> Changes = new("--changes") { Description = "Room volumes of fresh air an hour.", HelpName = "number" };
    private static readonly Option<string> To = new("--to") { Description = "The fraction that may be left: 0.01.", HelpName = "fraction" };
    private static readonly Option<string> Minutes = new("--minutes") { Description = "Or how long.", HelpName = "number" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("purge", "How long to air a room, or what is left after a time.") { Changes, To, Minutes }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var changes = typed.Needed(Changes, "6", Words.Number(0.01, 1000, 6));
        var to = typed.Value(To, Words.Fraction("0.01"));
        var minutes = typed.Value(Minutes, Words.Number(0, 100_000, 30));
        if (to is null == minutes is null && typed.Problems.Count == 0)
        {
            typed.Refuse(TypingProblems.OneOfTwo(To.Name, Minutes.Name));
        }

        return typed.Then(() => (to is { } fraction ? Purge.Until(changes, fraction) : Purge.After(changes, Duration.FromMinutes(minutes!.Value))).Then<Answer>(purge => Answer.Of(
            new Screen().Title($"{purge.Time.Minutes:0.#} min at {changes:0.##} air changes an hour leave {100 * purge.FractionLeft:0.###} %"),
            new PurgeAnswerJson(purge.Time.Minutes, purge.FractionLeft),
            c => c.PurgeAnswerJson)));
    }
}
