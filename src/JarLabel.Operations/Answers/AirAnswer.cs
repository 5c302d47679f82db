namespace JarLabel.Operations.Answers;

/// <summary>What is said of the air in a room.</summary>
internal static class AirAnswer
{
    /// <param name="bench">The shop.</param>
    /// <param name="solvent">What evaporates.</param>
    /// <param name="air">As it is shown: with the careful mixing factor where none was said.</param>
    /// <param name="figures">As programs are given it: with perfect mixing where none was said.</param>
    /// <param name="chart">The drawing that was written; empty for none.</param>
    internal static Answer Of(Workbench bench, Solvent solvent, AirAssessment air, AirAssessment figures, string chart)
    {
        var hazards = SupplyWords.Hazards(bench, solvent);
        return Answer.Of(
            Show(bench, hazards, air, chart),
            tell => AirAnswerJson.Of(figures, chart, tell) with
            {
                Careful = figures.Question.MixingFactor.Equals(air.Question.MixingFactor) ? null : CarefulAirJson.Of(air),
                PoisonWording = hazards.PoisonWording ? PoisonWords.Words : null,
                FirstAid = hazards.MethanolCounts ? FirstAidWords.Of(hazards, bench.Settings.PoisonCenter) : null,
            },
            c => c.AirAnswerJson,
            [.. AirCautions.Of(air)]);
    }

    private static Screen Show(Workbench bench, HazardAssessment hazards, AirAssessment air, string chart)
    {
        var question = air.Question;
        return new Screen().Title($"{BenchAmount.Both(question.Evaporated, bench.Metric)} evaporating in {question.Room.CubicMeters:0.#} m³ ({question.Room.CubicFeet:0} cu ft)").Gap()
            .Rows(
                ("vapour", $"{air.VaporVolume.CubicMeters:0.000} m³ at {question.Temperature.DegreesCelsius:0.#} °C"),
                ("at the most", $"{air.PeakPpm:0} ppm{(air.Saturated ? ", all that the air can hold" : "")}"),
                ("health", air.LimitPpm is { } limit ? $"{AirWords.Times(air.FractionOfLimit)} the exposure limit of {limit:0} ppm" : "no exposure limit is known"),
                ("held against", AirWords.Limits(air) is { Count: > 0 } limits ? string.Join("; ", limits) : null),
                ("fire", $"{100 * air.FractionOfLel:0.#} % of the lower explosive limit; work below 25 %"),
                ("it burns at", $"{AirWords.Burns(air)}; near the wet work there is always some that can"),
                ("fresh air for health", air.AirForLimit is { } health ? $"{AirWords.Flow(health)}{Spread(question)}" : null),
                ("fresh air for fire", $"{AirWords.Flow(air.AirForQuarterLel)}{Spread(question)}"),
                ("calculated with", AirWords.Mixing(question.MixingFactor)),
                ("governs", AirWords.Governs(air)),
                ("a window", AirWords.Window(air)),
                ("a fan", AirWords.Fan(air)),
                ("clear after", air.ClearAfter is { } clear ? $"{clear.Minutes:0} min" : "never without fresh air: open up"),
                ("chart", chart.Length > 0 ? chart : null))
            .Rows([.. PoisonRows.Of(bench, hazards)])
            .Rows(ListedRows.Of("doubt", air.Doubts))
            .Rows(ListedRows.Of("unverified", air.Unverified));
    }

    /// <summary>A sudden spill has no pace; the air is then reckoned as if it took an hour.</summary>
    private static string Spread(AirQuestion question) => question.Over is null ? ", if it dries over an hour" : "";
}
