namespace JarLabel.Core.Mixing;

/// <summary>What can be wrong with an order for a batch, a thinning, a thickening or a blend.</summary>
internal static class MixingProblems
{
    private static Message Ways => Message.Of($"Give {Cut} with one of {Pour}, {Flakes}, {new InputName("makes")} or {new InputName("fill")}; or {Pour} with {Flakes}, and the cut follows. For example {Cut with { Value = "1.5" }} {Pour with { Value = "350 mL" }}.");

    private static InputName Cut => new("cut");

    private static InputName Pour => new("pour");

    private static InputName Flakes => new("flakes");

    internal static Problem CutMissing() => new("JL131", Message.Of($"The cut is missing. {Ways}"), "cut");

    internal static Problem AmountMissing() => new("JL132", Message.Of($"There is a cut but no amount. {Ways}"), "pour");

    internal static Problem TooManyAmounts() => new("JL133", Message.Of($"Read more than one amount beside the cut. {Ways}"), "pour");

    internal static Problem CutAndBothAmounts() => new("JL133", Message.Of($"Read a cut, a pour and a weight of flakes: any two of them fix the third. {Ways}"), "cut");

    internal static Problem NoUsableCut(Mass flakes, Volume pour) => new(
        "JL134",
        string.Create(CultureInfo.InvariantCulture, $"{flakes.Grams:0.##} g of flakes in {pour.Milliliters:0.##} mL is {A(flakes.Pounds / pour.UsGallons)} lb cut; allowed is {PoundCut.Weakest} to {PoundCut.Strongest:0} lb. Check the units: flakes are weighed (oz, g), solvent is measured (fl oz, mL)."),
        "flakes");

    internal static Problem NotThinner(PoundCut from, PoundCut to) => new(
        "JL135",
        string.Create(CultureInfo.InvariantCulture, $"The liquid is {A(from.PoundsPerUsGallon)} lb cut and {to.PoundsPerUsGallon:0.###} lb was wanted; thinning leads to a weaker cut. To make it stronger, thicken it."),
        "to");

    internal static Problem NotThicker(PoundCut from, PoundCut to) => new(
        "JL136",
        string.Create(CultureInfo.InvariantCulture, $"The liquid is {A(from.PoundsPerUsGallon)} lb cut and {to.PoundsPerUsGallon:0.###} lb was wanted; thickening leads to a stronger cut. To make it weaker, thin it."),
        "to");

    internal static Problem NothingToBlend(int read) =>
        new("JL137", Message.Of($"Read {read} jar(s); a blend needs two or more, such as {new InputName("jar", "200 mL@2")} {new InputName("jar", "100 mL@1")}."), "jar");

    internal static Problem DoesNotFit(Recipe recipe, Volume container, Volume most, Recipe largest) => new(
        "JL138",
        Message.Of($"The batch makes {BenchAmount.Both(recipe.Makes)}; a container of {BenchAmount.Both(container)} holds {BenchAmount.Both(most)} at most with its 5 % head space (alcohol grows in the warm, and the jar is swirled). "
        + $"The largest batch of this cut that fits: pour {AtMostAmount.Both(largest.Pour)}, then {AtMostAmount.Both(largest.Flakes)} of flakes; or give {new InputName("fill", AtMostAmount.Metric(container))} instead of the amount."),
        "container");

    internal static Problem ThinningDoesNotFit(JarNumber jar, Thinning thinning, Volume container, Volume most, Volume pourOff, int jars) => new(
        "JL139",
        Message.Of($"Thinning adds {BenchAmount.Both(thinning.Add)} and makes {BenchAmount.Both(thinning.Makes)}; {Holds(container, most)} "
        + $"Pour off {BenchAmount.Both(Up(pourOff))} first and thin what is left ({new Remedy("decant", new InputName("jar", $"{jar.Value}"), new InputName("into", BenchAmount.Metric(Up(pourOff))))}); "
        + $"or split it evenly over {jars} such jars and thin each; or thin it into a larger jar with {new InputName("container", BenchAmount.Metric(Up(thinning.Makes / RecipeSolver.FullestFraction)))}."),
        "to");

    internal static Problem LiquidDoesNotFit(Volume liquid, Volume container, Volume most) => new(
        "JL139",
        Message.Of($"There are {BenchAmount.Both(liquid)}; {Holds(container, most)} Take less, or a larger jar such as {new InputName("container", BenchAmount.Metric(Up(liquid / RecipeSolver.FullestFraction)))}."),
        "container");

    internal static Problem TooSmallABatch(Recipe recipe, Volume least) => new(
        "JL370",
        Message.Of($"That would be {recipe.Pour.Milliliters:0.###} mL of alcohol and {recipe.Flakes.Grams:0.###} g of flakes; {Bench} The smallest batch of this cut that can be measured: {new InputName("pour", string.Create(CultureInfo.InvariantCulture, $"{least.Milliliters:0.#} mL"))}."),
        "pour");

    internal static Problem TooSmallAThinning(Thinning thinning, PoundCut from, double nearest) => new(
        "JL371",
        string.Create(CultureInfo.InvariantCulture, $"From {from.PoundsPerUsGallon:0.####} to {thinning.To.PoundsPerUsGallon:0.####} lb that would add {thinning.Add.Milliliters:0.###} mL to {BenchAmount.Both(thinning.Of)}; {Bench} The least that can be added makes it {ArticleWords.A(nearest.ToString("0.####", CultureInfo.InvariantCulture))} lb cut: it is the cut wanted already, as nearly as can be measured."),
        "to");

    internal static Problem TooSmallAThickening(Thickening thickening, PoundCut from, double nearest) => new(
        "JL371",
        string.Create(CultureInfo.InvariantCulture, $"From {from.PoundsPerUsGallon:0.####} to {thickening.To.PoundsPerUsGallon:0.####} lb that would add {thickening.Add.Grams:0.###} g to {BenchAmount.Both(thickening.Of)}; {Bench} The least that can be added makes it {ArticleWords.A(nearest.ToString("0.####", CultureInfo.InvariantCulture))} lb cut: it is the cut wanted already, as nearly as can be measured."),
        "to");

    internal static Problem TooSmallAJob(Coverage job) => new(
        "JL372",
        Message.Of($"The job takes {job.Liquid.Milliliters:0.###} mL with {job.Flakes.Grams:0.###} g of flakes in it; {Bench} Give a larger area, such as {new InputName("area", "14 sq ft")}."),
        "area");

    internal static Problem TooSmallAJar(Contents contents) => new(
        "JL373",
        string.Create(CultureInfo.InvariantCulture, $"That would be a jar of {contents.Poured.Milliliters:0.###} mL of alcohol and {contents.Flakes.Grams:0.###} g of flakes; {Bench} Pour more into it, such as \"100 mL\", or record it as used."),
        "jar");

    private static string A(double pounds) => ArticleWords.A(pounds.ToString("0.###", CultureInfo.InvariantCulture));

    private static string Bench => $"a bench measures {BenchAmount.Metric(BenchAmount.LeastVolume)} and {BenchAmount.Metric(BenchAmount.LeastMass)} at least.";

    /// <summary>The next amount up that can be poured, so that doing as told is enough.</summary>
    private static Volume Up(Volume volume)
    {
        var step = volume.Milliliters < 990 ? 1 : 10;
        return Volume.FromMilliliters(Math.Ceiling(volume.Milliliters / step) * step);
    }

    private static string Holds(Volume container, Volume most) =>
        $"a container of {BenchAmount.Both(container)} holds {BenchAmount.Both(most)} at most with its 5 % head space.";
}
