namespace JarLabel.Operations.Steps;

/// <summary>Sums of liquids without a jar.</summary>
internal static class CalcSteps
{
    internal const string UsualSpread = "400 sqft/gal";

    private static Input<PoundCut> Cut => field ??= Input.Of<PoundCut>("cut", "Cut", "2", CutText.Read).Help("cut", "The cut.");

    private static Input<PoundCut> From => field ??= Input.Of<PoundCut>("from", "From the cut", "3", CutText.Read).Help("cut", "The cut it is now.");

    private static Input<PoundCut> WeakerCut => field ??= Input.Of<PoundCut>("to", "To the cut", "1.5", CutText.Read).Help("cut", "The cut wanted.");

    private static Input<PoundCut> StrongerCut => field ??= WeakerCut.Change(one => one with { Example = "4" });

    private static Input<Volume> Liquid => field ??= Input.Of<Volume>("of", "Liquid there is", "300 mL", VolumeText.Read).In(UsualUnits.Volumes).Help("volume", "How much liquid there is.");

    private static Input<IReadOnlyList<(Volume, PoundCut)>> Parts => field ??= Input.Some<(Volume, PoundCut)>("jar", "Parts", "200 mL@2", ReadPart)
        .Help("volume@cut", "A part as volume@cut, such as \"200 mL@2\"; give it once for each part.").Hint("200 mL@2; 100 mL@1");

    private static Input<Area> Area => field ??= Input.Of<Area>("area", "What is covered", "14 sq ft", AreaText.Read).Help("area", "What is covered: \"14 sq ft\", \"1.3 m2\", \"30 x 20 in\".").Hint("14 sq ft, 1.3 m2, 30 x 20 in");

    private static Input<int> Coats => field ??= Input.Of<int>("coats", "Coats", "3", ValueReader.WholeNumber(1, 1000).Invoke).Help("number", "How many coats.");

    private static Input<IReadOnlyList<Core.Catalog.Composition>> Mixtures => field ??= Input.Of<IReadOnlyList<Core.Catalog.Composition>>(
        "contents", "Percent by weight", "ethanol=90,methanol=5,water=5", (bench, text, where) => ContentsText.Possible(text, bench.Catalog, where))
        .Help("contents", "Percent by weight: \"ethanol=90,methanol=5,water=5\", ranges as in \"methanol=30-60\", \"water=rest\".");

    private static Input<double> Strength => field ??= Input.Of<double>("strength", "Percent by volume", "95", ValueReader.Percent(0, 100, 95).Invoke).Help("percent", "Percent by volume at 20 C, 0 to 100.");

    private static Input<string> Ethanol => field ??= Input.Of<string>("solvent", "Alcohol", "ethanol", (text, where) => text.Trim() is "ethanol" ? "ethanol" : TypingProblems.NotAChoice(text, where, ["ethanol"]))
        .Help("id", "ethanol.").Choices(_ => [("ethanol", "ethanol and water")]);

    private static Input<PoundCut?> OneCut => field ??= Input.Optional<PoundCut>("cut", "Cut", "2", CutText.Read).Help("cut", "The cut.");

    private static Input<string?> Percent => field ??= Input.Word("percent", "Or solids by weight, %", "23").Help("percent", "Or the solids by weight, in percent.");

    internal static Step Mix => field ??= Step.OfShop("calc mix", "Work out a batch", "Flakes, alcohol and finished volume of a batch, with nothing recorded.", [Shared.Solvent, MixStep.Batch, Shared.Temperature], DoMix) with
    { Looks = true, Known = MixStep.Amounts, Example = [new("solvent", "ethanol-95"), new("cut", "2"), new("pour", "350 mL")] };

    internal static Step Thin => field ??= Step.OfShop("calc thin", "Work out a thinning", "Alcohol to add to come to a weaker cut.", [From, WeakerCut, Liquid], DoThin) with { Looks = true };

    internal static Step Thicken => field ??= Step.OfShop("calc thicken", "Work out a thickening", "Flakes to add to come to a stronger cut.", [From, StrongerCut, Liquid], DoThicken) with { Looks = true };

    internal static Step Blending => field ??= Step.OfShop("calc blend", "Work out a blend", "Cut and volume of several liquids poured together.", [Parts], DoBlend) with
    { Looks = true, Example = [new("jar", "200 mL@2"), new("jar", "100 mL@1")] };

    internal static Step SolidsOf => field ??= Step.OfShop("calc solids", "Solids of a cut", "Solids by weight and volume of a cut, or the cut of so much solids.", [OneCut, Percent, Shared.Solvent], DoSolids) with
    { Looks = true, Example = [new("cut", "2"), new("solvent", "ethanol-95")] };

    internal static Step Density => field ??= Step.OfShop("calc density", "Density of an alcohol", "Density of ethanol and water by the international formula.", [Ethanol, Strength, PlainTemperature], DoDensity) with { Looks = true };

    internal static Step Hazards => field ??= Step.OfShop("calc hazards", "Hazards of a mixture", "Hazard classes, signal word, pictograms and phrases of a mixture.", [Mixtures], DoHazards) with { Looks = true };

    internal static Step Covering => field ??= Step.OfShop("calc coverage", "How far it covers", "Liquid, flakes and dry film of a job.", [Cut, Area, Coats, Spread], DoCoverage) with { Looks = true };

    /// <summary>How far a liquid spreads.</summary>
    internal static Input<Length> Spread => field ??= Input.Or("spread", "How far it spreads", UsualSpread, SpreadText.Read, SpreadText.Read(UsualSpread, "spread").Require())
        .Help("spread", $"How far it spreads; \"{UsualSpread}\" unless said, a guess: coats differ much.").Hint($"{UsualSpread} when left empty, a guess").More();

    /// <summary>A temperature that is said without the bench.</summary>
    internal static Input<Temperature?> PlainTemperature => field ??= Shared.Temperature.Help("temperature", "Temperature: 68F, \"20 C\" (the default).");

    private static Result<Outcome> DoMix(Values given)
    {
        var solvent = given.Get(Shared.Solvent);
        if (!RecipeSolver.Solve(given.Get(MixStep.Batch), solvent.DensityAt(given.Get(Shared.Temperature) ?? Warmth.Reference)).TryGet(out var recipe, out var faults))
        {
            return faults;
        }

        var cautions = BatchCautions.OfLiquid(recipe, solvent);
        var screen = new Screen().Title($"{CutWords.Of(recipe.Cut)} in {solvent.Name}").Gap().Rows(RecipeRows.Of(recipe, solvent, "flakes", given.Bench.Metric));
        return new Outcome(Answer.Of(screen, tell => new RecipeAnswerJson(RecipeJson.Of(recipe, solvent), tell(cautions)), c => c.RecipeAnswerJson, cautions));
    }

    private static Result<Outcome> DoThin(Values given)
    {
        var (from, to) = (given.Get(From), given.Get(WeakerCut));
        if (!Thinning.Solve(from, to, given.Get(Liquid)).Then(solved => Measurable.Demand(solved, from)).TryGet(out var thinning, out var faults))
        {
            return faults;
        }

        return new Outcome(Answer.Of(
            new Screen().Title($"{CutWords.Of(from)} to {CutWords.Of(to)}").Gap().Rows(
                ("add", BenchAmount.Both(thinning.Add, given.Bench.Metric) + " of the same alcohol"),
                ("that is", $"{VulgarFraction.Of(thinning.PartsPerPart)} parts to 1 part of liquid"),
                ("makes", BenchAmount.Both(thinning.Makes, given.Bench.Metric))),
            new ThinAnswerJson(thinning.Add.Milliliters, thinning.PartsPerPart, thinning.Makes.Milliliters, to.PoundsPerUsGallon),
            c => c.ThinAnswerJson));
    }

    private static Result<Outcome> DoThicken(Values given)
    {
        var (from, to) = (given.Get(From), given.Get(StrongerCut));
        if (!Thickening.Solve(from, to, given.Get(Liquid)).Then(solved => Measurable.Demand(solved, from)).TryGet(out var thickening, out var faults))
        {
            return faults;
        }

        return new Outcome(Answer.Of(
            new Screen().Title($"{CutWords.Of(from)} to {CutWords.Of(to)}").Gap().Rows(
                ("add", BenchAmount.Both(thickening.Add, given.Bench.Metric) + " of flakes, then wait until they are dissolved"),
                ("makes", BenchAmount.Both(thickening.Makes, given.Bench.Metric))),
            new ThickenAnswerJson(thickening.Add.Grams, thickening.Makes.Milliliters, to.PoundsPerUsGallon),
            c => c.ThickenAnswerJson));
    }

    private static Result<Outcome> DoBlend(Values given) => Blend.Solve(given.Get(Parts)).Then<Outcome>(blend => new Outcome(Answer.Of(
        new Screen().Title(CutWords.Of(blend.Cut)).Gap().Rows(("makes", BenchAmount.Both(blend.Makes, given.Bench.Metric))),
        new BlendAnswerJson(blend.Makes.Milliliters, blend.Cut.PoundsPerUsGallon),
        c => c.BlendAnswerJson)));

    private static Result<(Volume, PoundCut)> ReadPart(Workbench bench, string text, string where)
    {
        if (text.Split('@') is not [var volume, var cut])
        {
            return TypingProblems.NotAPart(text, where);
        }

        return VolumeText.Read(volume, where).Then(v => CutText.Read(cut, where).Then<(Volume, PoundCut)>(c => (v, c)));
    }

    private static Result<Outcome> DoSolids(Values given)
    {
        var density = given.Get(Shared.Solvent).DensityAt(Warmth.Reference);
        var (cut, percent) = (given.Get(OneCut), given.Get(Percent));
        if (cut is null == percent is null)
        {
            return TypingProblems.OneOfTwo("cut", "percent");
        }

        if (percent is null)
        {
            return Shown(cut!.Value, density);
        }

        return SolidsText.Read(percent, density, "percent").Then(share => Solids.CutOf(share / 100, density)).Then<Outcome>(found => Shown(found, density));
    }

    private static Outcome Shown(PoundCut cut, UnitsNet.Density density)
    {
        var recipe = Solids.OfCut(cut, density);
        var inLiquid = recipe.FlakesInLiquid;
        return new Outcome(Answer.Of(
            new Screen().Title(CutWords.Of(cut)).Gap().Rows(
                ("solids by weight", RecipeRows.Percent(recipe.SolidsByWeight)),
                ("solids by volume", RecipeRows.Percent(recipe.SolidsByVolume)),
                ("shellac in the liquid", string.Create(CultureInfo.InvariantCulture, $"{inLiquid.GramsPerLiter:0} g/L ({inLiquid.PoundsPerUSGallon:0.00} lb/gal)")),
                ("weight of the liquid", string.Create(CultureInfo.InvariantCulture, $"{recipe.LiquidDensity.KilogramsPerLiter:0.000} kg/L ({recipe.LiquidDensity.PoundsPerUSGallon:0.00} lb/gal)"))),
            new SolidsAnswerJson(cut.PoundsPerUsGallon, recipe.SolidsByWeight, recipe.SolidsByVolume, inLiquid.GramsPerLiter, inLiquid.PoundsPerUSGallon),
            c => c.SolidsAnswerJson));
    }

    private static Result<Outcome> DoDensity(Values given)
    {
        var (strength, temperature) = (given.Get(Strength), given.Get(PlainTemperature) ?? Warmth.Reference);
        var fraction = EthanolWater.MassFraction(strength);
        var density = EthanolWater.DensityAt(fraction, temperature);
        var expansion = EthanolWater.ExpansionPerKelvin(fraction, temperature);
        return new Outcome(Answer.Of(
            new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"Ethanol {strength:0.##} % by volume at {temperature.DegreesCelsius:0.#} °C ({temperature.DegreesFahrenheit:0.#} °F)")).Gap().Rows(
                ("density", string.Create(CultureInfo.InvariantCulture, $"{density.KilogramsPerCubicMeter:0.00} kg/m³ ({density.PoundsPerUSGallon:0.000} lb/gal)")),
                ("grows", string.Create(CultureInfo.InvariantCulture, $"{100 * expansion:0.000} % per °C"))),
            new DensityAnswerJson(density.KilogramsPerCubicMeter, density.PoundsPerUSGallon, expansion),
            c => c.DensityAnswerJson));
    }

    private static Result<Outcome> DoHazards(Values given)
    {
        var (bench, catalog) = (given.Bench, given.Bench.Catalog);
        var hazards = MixtureClassifier.Classify(given.Get(Mixtures), bench.Rules, catalog);
        var screen = new Screen().Title($"{hazards.SignalText ?? "No signal word"} · {string.Join(", ", hazards.ClassCodes)}").Gap()
            .Rows(ListedRows.Of("says", hazards.StatementTexts(catalog)))
            .Rows(hazards.PoisonWording ? [("poison", PoisonWords.Text), ("", "with the skull and crossbones and the signal word (16 CFR 1500.14(b)(4))")] : [])
            .Rows(ListedRows.Of("first aid", FirstAidWords.Of(hazards, bench.Settings.PoisonCenter)))
            .Rows(("pictograms", string.Join(", ", hazards.Pictograms)))
            .Gap().Rows(ListedRows.Of("why", hazards.Why))
            .Rows(ListedRows.Of("doubt", hazards.Doubts))
            .Rows(ListedRows.Of("unverified", hazards.Unverified));
        return new Outcome(Answer.Of(screen, new HazardsAnswerJson(HazardsJson.Of(hazards, bench.Settings.PoisonCenter)), c => c.HazardsAnswerJson));
    }

    private static Result<Outcome> DoCoverage(Values given)
    {
        var (cut, coats, metric) = (given.Get(Cut), given.Get(Coats), given.Bench.Metric);
        if (!Measurable.Demand(Coverage.Of(cut, given.Get(Area), coats, given.Get(Spread))).TryGet(out var job, out var faults))
        {
            return faults;
        }

        var film = job.DryCoat.Micrometers;
        return new Outcome(Answer.Of(
            new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{coats} coats of {CutWords.Of(cut)}")).Gap().Rows(
                ("liquid", BenchAmount.Both(job.Liquid, metric)),
                ("flakes in it", BenchAmount.Both(job.Flakes, metric)),
                ("dry film a coat", string.Create(CultureInfo.InvariantCulture, $"{film:0.#} µm ({film / 25.4:0.00} mil)"))),
            new CoverageAnswerJson(job.Liquid.Milliliters, film, job.Flakes.Grams),
            c => c.CoverageAnswerJson));
    }
}
