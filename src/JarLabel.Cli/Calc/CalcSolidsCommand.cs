using System.CommandLine;
using JarLabel.Cli.Commands;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Keeping;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc solids</c>: from a cut to the solids of the liquid, or back.</summary>
internal static class CalcSolidsCommand
{
    /// <summary>About a 2-lb cut in alcohol.</summary>
    private const double UsualPercent = 23;

    private static readonly Option<string> Cut = new("--cut") { Description = "The cut.", HelpName = "cut" };
    private static readonly Option<string> Percent = new("--percent") { Description = "Or the solids by weight, in percent.", HelpName = "percent" };
    private static readonly Option<string> Solvent = BatchOptions.Solvent();

    internal static Command Create(Runner runner) => runner.Runs(new Command("solids", "Solids by weight and volume of a cut, or the cut of so much solids.") { Cut, Percent, Solvent }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var cut = typed.Value(Cut, CutText.Read);
        Density? solvent = typed.Needed(Solvent, "ethanol-95", session.Solvent)?.DensityAt(Warmth.Reference);
        var percent = solvent is { } weighs ? typed.Value(Percent, InPercent(weighs)) : null;
        var density = solvent ?? default;
        if (cut is null == percent is null && typed.Problems.Count == 0)
        {
            typed.Refuse(TypingProblems.OneOfTwo(Cut.Name, Percent.Name));
        }

        return typed.Then(() => cut is { } known ? Show(known, density) : Solids.CutOf(percent!.Value / 100, density).Then(found => Show(found, density)));
    }

    /// <summary>The solids there can be with this solvent: those of the weakest cut to those of the strongest.</summary>
    private static Func<string, string, Result<double>> InPercent(Density solvent) => Words.Number(
        Math.Ceiling(1e4 * Solids.ByWeight(PoundCut.Weakest, solvent)) / 100, Math.Floor(1e3 * Solids.ByWeight(PoundCut.Strongest, solvent)) / 10, UsualPercent);

    private static Result<Answer> Show(PoundCut cut, Density density)
    {
        var recipe = Solids.OfCut(cut, density);
        var inLiquid = recipe.FlakesInLiquid;
        return Answer.Of(
            new Screen().Title(CutWords.Of(cut)).Gap().Rows(
                ("solids by weight", RecipeRows.Percent(recipe.SolidsByWeight)),
                ("solids by volume", RecipeRows.Percent(recipe.SolidsByVolume)),
                ("shellac in the liquid", $"{inLiquid.GramsPerLiter:0} g/L ({inLiquid.PoundsPerUSGallon:0.00} lb/gal)"),
                ("weight of the liquid", $"{recipe.LiquidDensity.KilogramsPerLiter:0.000} kg/L ({recipe.LiquidDensity.PoundsPerUSGallon:0.00} lb/gal)")),
            new SolidsAnswerJson(cut.PoundsPerUsGallon, recipe.SolidsByWeight, recipe.SolidsByVolume, inLiquid.GramsPerLiter, inLiquid.PoundsPerUSGallon),
            c => c.SolidsAnswerJson);
    }
}
