using System.CommandLine;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc thicken</c>: what to add to a liquid that is too weak.</summary>
internal static class CalcThickenCommand
{
    private static readonly ChangeOptions Change = new();

    internal static Command Create(Runner runner) =>
        runner.Runs(Change.AddTo(new Command("thicken", "Flakes to add to come to a stronger cut.")), Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var (from, to, of) = Change.Read(typed);
        return typed.Then(() => Thickening.Solve(from, to, of).Then(thickening => Measurable.Demand(thickening, from)).Then<Answer>(thickening => Answer.Of(
            new Screen().Title($"{CutWords.Of(from)} to {CutWords.Of(to)}").Gap().Rows(
                ("add", BenchAmount.Both(thickening.Add, session.Workbench.Metric) + " of flakes, then wait until they are dissolved"),
                ("makes", BenchAmount.Both(thickening.Makes, session.Workbench.Metric))),
            new ThickenAnswerJson(thickening.Add.Grams, thickening.Makes.Milliliters, to.PoundsPerUsGallon),
            c => c.ThickenAnswerJson)));
    }
}
