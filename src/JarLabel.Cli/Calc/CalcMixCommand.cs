using System.CommandLine;
using JarLabel.Cli.Commands;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Keeping;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc mix</c>: a batch solved, and nothing recorded.</summary>
internal static class CalcMixCommand
{
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly BatchOptions Batch = new();

    internal static Command Create(Runner runner)
    {
        var command = new Command("mix", "Flakes, alcohol and finished volume of a batch, with nothing recorded.") { Solvent };
        Batch.AddTo(command);
        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var solvent = typed.Needed(Solvent, "ethanol-95", session.Solvent);
        var order = Batch.Read(typed);
        var bench = Batch.ReadTemperature(typed) ?? Warmth.Reference;
        return typed.Then(() => RecipeSolver.Solve(order, solvent.DensityAt(bench)).Then<Answer>(recipe =>
        {
            var cautions = BatchCautions.OfLiquid(recipe, solvent);
            var screen = new Screen().Title($"{CutWords.Of(recipe.Cut)} in {solvent.Name}").Gap().Rows(RecipeRows.Of(recipe, solvent, "flakes", session.Workbench.Metric));
            return Answer.Of(screen, new RecipeAnswerJson(RecipeJson.Of(recipe, solvent), cautions), c => c.RecipeAnswerJson, cautions);
        }));
    }
}
