using System.CommandLine;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc thin</c>: what to add to a liquid that is too strong.</summary>
internal static class CalcThinCommand
{
    private static readonly ChangeOptions Change = new();

    internal static Command Create(Runner runner) =>
        runner.Runs(Change.AddTo(new Command("thin", "Alcohol to add to come to a weaker cut.")), Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var (from, to, of) = Change.Read(typed);
        return typed.Then(() => Thinning.Solve(from, to, of).Then(thinning => Measurable.Demand(thinning, from)).Then<Answer>(thinning => Answer.Of(
            new Screen().Title($"{CutWords.Of(from)} to {CutWords.Of(to)}").Gap().Rows(
                ("add", BenchAmount.Both(thinning.Add, session.Workbench.Metric) + " of the same alcohol"),
                ("that is", $"{VulgarFraction.Of(thinning.PartsPerPart)} parts to 1 part of liquid"),
                ("makes", BenchAmount.Both(thinning.Makes, session.Workbench.Metric))),
            new ThinAnswerJson(thinning.Add.Milliliters, thinning.PartsPerPart, thinning.Makes.Milliliters, to.PoundsPerUsGallon),
            c => c.ThinAnswerJson)));
    }
}
