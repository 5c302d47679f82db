using System.Globalization;
using JarLabel.Core.Labels;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>What can be wrong with an order for a batch, a thinning, a thickening or a blend.</summary>
internal static class MixingProblems
{
    private const string Ways = "Give --cut with one of --pour, --flakes, --makes or --fill; or --pour with --flakes, and the cut follows. For example --cut 1.5 --pour \"350 mL\".";

    internal static Problem CutMissing() => new("JL131", $"The cut is missing. {Ways}", "--cut");

    internal static Problem AmountMissing() => new("JL132", $"There is a cut but no amount. {Ways}", "--pour");

    internal static Problem TooManyAmounts() => new("JL133", $"Read more than one amount beside the cut. {Ways}", "--pour");

    internal static Problem CutAndBothAmounts() => new("JL133", $"Read a cut, a pour and a weight of flakes: any two of them fix the third. {Ways}", "--cut");

    internal static Problem NoUsableCut(Mass flakes, Volume pour) => new(
        "JL134",
        string.Create(CultureInfo.InvariantCulture, $"{flakes.Grams:0.##} g of flakes in {pour.Milliliters:0.##} mL is a {flakes.Pounds / pour.UsGallons:0.###} lb cut; allowed is {PoundCut.Weakest} to {PoundCut.Strongest:0} lb. Check the units: flakes are weighed (oz, g), solvent is measured (fl oz, mL)."),
        "--flakes");

    internal static Problem NotThinner(PoundCut from, PoundCut to) => new(
        "JL135",
        string.Create(CultureInfo.InvariantCulture, $"The liquid is a {from.PoundsPerUsGallon:0.###} lb cut and {to.PoundsPerUsGallon:0.###} lb was wanted; thinning leads to a weaker cut. To make it stronger, thicken it."),
        "--to");

    internal static Problem NotThicker(PoundCut from, PoundCut to) => new(
        "JL136",
        string.Create(CultureInfo.InvariantCulture, $"The liquid is a {from.PoundsPerUsGallon:0.###} lb cut and {to.PoundsPerUsGallon:0.###} lb was wanted; thickening leads to a stronger cut. To make it weaker, thin it."),
        "--to");

    internal static Problem NothingToBlend(int read) =>
        new("JL137", string.Create(CultureInfo.InvariantCulture, $"Read {read} jar(s); a blend needs two or more, such as --jar \"200 mL@2\" --jar \"100 mL@1\"."), "--jar");

    internal static Problem DoesNotFit(Recipe recipe, Volume container, Volume most, Recipe largest) => new(
        "JL138",
        $"The batch makes {BenchAmount.Both(recipe.Makes)}; a container of {BenchAmount.Both(container)} holds {BenchAmount.Both(most)} at most with its 5 % head space (alcohol grows in the warm, and the jar is swirled). "
        + $"The largest batch of this cut that fits: pour {BenchAmount.Both(largest.Pour)}, then {BenchAmount.Both(largest.Flakes)} of flakes; or give --fill \"{BenchAmount.Metric(container)}\" instead of the amount.",
        "--container");

    internal static Problem ThinningDoesNotFit(Thinning thinning, Volume container, Volume most, Volume pourOff, int jars) => new(
        "JL139",
        $"Thinning adds {BenchAmount.Both(thinning.Add)} and makes {BenchAmount.Both(thinning.Makes)}; {Holds(container, most)} "
        + $"Pour off {BenchAmount.Both(Up(pourOff))} first and thin what is left (\"jarlabel decant JAR --into '{BenchAmount.Metric(Up(pourOff))}'\"); "
        + string.Create(CultureInfo.InvariantCulture, $"or split it evenly over {jars} such jars and thin each; or thin it into a larger jar with --container \"{BenchAmount.Metric(Up(thinning.Makes / RecipeSolver.FullestFraction))}\"."),
        "--to");

    internal static Problem LiquidDoesNotFit(Volume liquid, Volume container, Volume most) => new(
        "JL139",
        $"There are {BenchAmount.Both(liquid)}; {Holds(container, most)} Take less, or a larger jar such as --container \"{BenchAmount.Metric(Up(liquid / RecipeSolver.FullestFraction))}\".",
        "--container");

    /// <summary>The next amount up that can be poured, so that doing as told is enough.</summary>
    private static Volume Up(Volume volume)
    {
        var step = volume.Milliliters < 990 ? 1 : 10;
        return Volume.FromMilliliters(Math.Ceiling(volume.Milliliters / step) * step);
    }

    private static string Holds(Volume container, Volume most) =>
        $"a container of {BenchAmount.Both(container)} holds {BenchAmount.Both(most)} at most with its 5 % head space.";
}
