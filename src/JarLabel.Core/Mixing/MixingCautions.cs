namespace JarLabel.Core.Mixing;

/// <summary>The words of the cautions about a batch.</summary>
public static class MixingCautions
{
    internal static Problem UnknownSolvent(Solvent solvent) => new(
        "JL171",
        Message.Of($"Nobody has said what all is in {solvent.Name}, so the label answers for the worst that it may be{Methanol(solvent)}. Section 3 of the can's safety data sheet gives the percentages: enter them with {new Remedy("can add")}, and name that can instead."),
        "solvent");

    private static string Methanol(Solvent solvent) => solvent.Compositions.Max(c => c.PercentOf(Substance.MethanolId)) is var most and > 0
        ? string.Create(CultureInfo.InvariantCulture, $" (up to {most:0.#} % methanol by weight)")
        : "";

    internal static Problem TooWet(Solvent solvent) => new(
        "JL172",
        string.Create(CultureInfo.InvariantCulture, $"{Capital.Of(solvent.Name)} {(solvent.CompositionKnown && solvent.Compositions.Count == 1 ? "holds" : "may hold up to")} {solvent.MostWaterPercentByVolume:0} % water by volume: shellac dissolves badly in it, dries slowly and blushes. At most {Solvent.TooWetAbove:0} % is good; ethanol of 95 % or isopropanol of 99 % serves."),
        "solvent");

    internal static Problem Syrup(PoundCut cut) => new(
        "JL173",
        string.Create(CultureInfo.InvariantCulture, $"{Capital.Of(ArticleWords.A(Figure($"{cut.PoundsPerUsGallon:0.##}")))} lb cut is a syrup: it dissolves slowly, strains badly and is for thinning later. Up to 5 lb works at most benches."),
        "cut");

    private static string Figure(FormattableString figure) => figure.ToString(CultureInfo.InvariantCulture);

    internal static Problem ChildResistant(HazardAssessment hazards) => new("JL385", ChildResistantLid.WantedForMethanol(hazards) ? Methanol(hazards) : Classed(hazards), "container");

    private static string Methanol(HazardAssessment hazards) => string.Create(
        CultureInfo.InvariantCulture,
        $"It holds {hazards.MethanolPercent:0.#} % methanol by weight, and a child that drinks of it may go blind or die: close it with a child-resistant lid and lock it away. What is sold to households needs such a lid from {ChildResistantLid.From(hazards.Rules)} % ({ChildResistantLid.Rule(hazards.Rules)}).");

    private static string Classed(HazardAssessment hazards) =>
        $"A child that drinks of it may die: close it with a child-resistant lid and lock it away. What is sold to households needs such a lid where it is {ChildResistantLid.ClassThatWants(hazards)!.Code} ({ChildResistantLid.RuleOfClass(hazards.Rules)}).";

    internal static Problem BareMetal() => new(
        "JL174",
        "Shellac darkens in bare iron or tin, and its acid eats pinholes; keep it in glass or lined metal.",
        "material");

    internal static Problem OldFlakes(Grade grade) => new(
        "JL175",
        $"These {grade.Name} flakes are past their dry life; the use-by is shortened. Dissolve a pinch first: what stays as a gel in the jar will not dry hard.",
        "flake-date");

    internal static Problem CloudyFlakes(Grade grade) => new(
        "JL399",
        $"A pinch of these {grade.Name} flakes dissolved cloudy, so the use-by is shortened to half or less. Strain it, and let a few drops dry on glass before use.",
        "bag");

    internal static Problem PastUse(TestResult? test, DateTime now) => new(
        "JL170",
        $"This shellac is past its use-by: it may never dry hard. {Counted(test, now)}Let a few drops dry on glass first, and when they stay soft or tacky, discard it.",
        "jar");

    internal static Problem Failed(JarNumber jar, TestResult test) => new(
        "JL170",
        Message.Of($"Jar {jar} {(test.OfMother ? "holds liquid of a jar that failed its" : "failed its")} drying test on {DateWords.Of(test.Day)}: it may never dry hard, so do not use it as a finish. {new Remedy("discard", new InputName("jar", $"{jar.Value}"))} takes it off the shelf; only a later test that dries hard says otherwise."),
        "jar");

    internal static Problem StillDissolving() => new(
        "JL178",
        "The flakes are not all dissolved yet, so the liquid is weaker than the cut it will come to. Wait until it is ready, or strain and judge by eye.",
        "jar");

    /// <summary>That its drops dried hard but slowly when it was last tested.</summary>
    public static Problem DriedSlowly(JarNumber jar) =>
        new("JL398", $"The drops of jar {jar} dried hard but clearly slower than fresh ones: it is near its end. Try a few drops before each use, keep it for small or inner work, and mix anew for a top coat.", "jar");

    internal static Problem TestedPastUse(JarNumber jar, TestResult test) =>
        new("JL179", $"Drops of jar {jar} dried hard on {DateWords.Of(test.Day)}, after its estimated use-by: it may be used while they do. Try a few before each use, keep it for small or inner work, and mix anew for a top coat.", "jar");

    internal static Problem NotTestedOfLate(JarNumber jar, TestResult? test, DateTime now) => new(
        "JL179",
        Message.Of($"This jar is old enough to be tested before use. {Counted(test, now)}Let a few drops dry on glass and tell how they dried, such as {new Remedy("test", new InputName("jar", $"{jar.Value}"), new InputName("verdict", "pass"))}."),
        "jar");

    /// <summary>What became of a test that the jar passed too long ago.</summary>
    private static string Counted(TestResult? test, DateTime now) => test is { Passed: true } && !test.HoldsOn(DateOnly.FromDateTime(now))
        ? string.Create(CultureInfo.InvariantCulture, $"Its drops dried hard on {DateWords.Of(test.Day)}; that counted for {TestResult.HoldsDays} days. ")
        : "";
}
