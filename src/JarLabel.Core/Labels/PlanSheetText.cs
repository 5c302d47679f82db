namespace JarLabel.Core.Labels;

/// <summary>Everything that is printed on the sheet that goes to the bench with a job.</summary>
/// <param name="Title">What is brushed on: grade and alcohol.</param>
/// <param name="Summary">How much, on which day, how sure.</param>
/// <param name="Lines">The job, line by line, under <see cref="PlanWords.LineHeads"/>.</param>
/// <param name="Takes">What it takes.</param>
/// <param name="Steps">What to do, in order, with the command that records it where there is one.</param>
/// <param name="Cautions">What every session with alcohol needs. Common practice.</param>
/// <param name="Closing">What comes before all of it.</param>
public sealed record PlanSheetText(
    string Title,
    string Summary,
    IReadOnlyList<string[]> Lines,
    IReadOnlyList<(string Label, string? Words)> Takes,
    IReadOnlyList<(string Words, string? Command)> Steps,
    IReadOnlyList<string> Cautions,
    string Closing)
{
    /// <summary>What stands over the steps.</summary>
    public const string StepsHead = "Tick what is done. The line under a step records it; a new jar gets its label. What you pour from a bottle besides, measure afterwards.";

    /// <summary>The words of the sheet.</summary>
    /// <param name="shop">The shop's name; null where it has none.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="steps">Its steps.</param>
    /// <param name="grade">The flakes.</param>
    /// <param name="solvent">The alcohol.</param>
    /// <param name="air">The air while the thirstiest coat dries.</param>
    /// <param name="room">Air in the room.</param>
    /// <param name="now">The moment.</param>
    /// <param name="metric">Metric amounts first.</param>
    public static PlanSheetText For(
        string? shop, JobPlan plan, IReadOnlyList<(string Words, string? Command)> steps, Grade grade, Solvent solvent, AirAssessment air, Volume room, DateTime now, bool metric)
    {
        return new(
            $"{Capital.Of(grade.Name)} in {solvent.ShortName}",
            $"{(shop is null ? "" : shop + ", ")}{DateWords.Of(DateOnly.FromDateTime(now))}: {PlanWords.Liquid(plan, metric)}. Low confidence: coats and waste differ much.",
            PlanWords.Lines(plan, metric),
            PlanWords.Takes(plan, air, room, metric),
            steps,
            [
                .. AirCautions.Of(air).Select(caution => caution.Message),
                "Highly flammable: no spark, heater or pilot light; a burning alcohol flame is nearly invisible by day.",
                "Window and door open, a fan that blows outdoors; goggles and gloves.",
                RagWords.AtTheBench,
                .. plan.Batches.Count > 0 ? [DissolveWords.Safely] : Array.Empty<string>(),
                .. ((string?[])[PlanWords.Mist(plan), PlanWords.Glass(plan)]).OfType<string>(),
            ],
            ShelfNotice.Closing);
    }

    /// <summary><c>3 more steps have no room here: "jarlabel plan" lists them.</c></summary>
    public static string More(int steps) => string.Create(CultureInfo.InvariantCulture, $"{steps} more step{(steps == 1 ? " has" : "s have")} no room here: “jarlabel plan” lists all.");
}
