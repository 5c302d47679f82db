namespace JarLabel.Operations.Answers;

/// <summary>What <c>plan</c> says to a program.</summary>
internal sealed record PlanAnswerJson(
    IReadOnlyList<PlanLineJson> Lines,
    IReadOnlyList<PlanJarJson> Jars,
    IReadOnlyList<PlanBatchJson> Batches,
    double FlakesGrams,
    double FlakesAtHandGrams,
    double FlakesMissingGrams,
    double AlcoholMilliliters,
    double AlcoholAtHandMilliliters,
    double AlcoholMissingMilliliters,
    double EvaporatedMilliliters,
    double WorstCoatMilliliters,
    AirAnswerJson Air,
    IReadOnlyList<PlanStepJson> Steps,
    string Confidence,
    string? Calendar,
    IReadOnlyList<Problem> Warnings)
{
    /// <summary>The sheet for the bench, where one was wanted.</summary>
    public string? Sheet { get; init; }

    internal static PlanAnswerJson Of(PlannedJob job, Tell tell)
    {
        var plan = job.Plan;
        return new(
            [.. plan.Lines.Select(l => new PlanLineJson(l.Kind.Word, l.Area.SquareMeters, l.Coats, l.Cut.PoundsPerUsGallon, l.Coverage.Liquid.Milliliters, l.Waste, l.Needed.Milliliters, l.Coverage.DryCoat.Micrometers))],
            [.. plan.Serves.Select(s => new PlanJarJson(s.Line + 1, s.Jar.Number.ToString(), s.Take.Milliliters, s.Add.Milliliters, s.To.PoundsPerUsGallon, s.Gives.Milliliters, Day(s.Jar.UseBy), s.Jar.TestFirst))],
            [.. plan.Batches.Select(b => new PlanBatchJson([.. b.Lines.Select(l => l + 1)], b.Recipe.Cut.PoundsPerUsGallon, b.Recipe.Pour.Milliliters, b.Recipe.Flakes.Grams, b.Recipe.Makes.Milliliters, job.Fresh.Ready.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture), Day(job.Fresh.UseBy)))],
            plan.Flakes.Grams,
            plan.FlakesAtHand.Grams,
            plan.FlakesMissing.Grams,
            plan.Alcohol.Milliliters,
            plan.AlcoholAtHand.Milliliters,
            plan.AlcoholMissing.Milliliters,
            plan.Evaporated.Milliliters,
            plan.WorstCoat.Milliliters,
            AirAnswerJson.Of(job.Air, null, tell),
            [.. job.Steps.Select(s => new PlanStepJson(s.Words, CommandLine.Of(s.Step)))],
            "low",
            job.Request.Calendar,
            tell(job.Cautions));
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

/// <summary>A batch to mix, for a program.</summary>
internal sealed record PlanBatchJson(IReadOnlyList<int> Lines, double CutPoundsPerGallon, double PourMilliliters, double FlakesGrams, double MakesMilliliters, string Ready, string UseBy);

/// <summary>What a jar gives to a line, for a program.</summary>
internal sealed record PlanJarJson(int Line, string Jar, double TakeMilliliters, double AddMilliliters, double CutPoundsPerGallon, double GivesMilliliters, string UseBy, bool TestFirst);

/// <summary>One line of a job, for a program.</summary>
internal sealed record PlanLineJson(string For, double SquareMeters, int Coats, double CutPoundsPerGallon, double AppliedMilliliters, double WasteFraction, double NeededMilliliters, double DryMicrometersPerCoat);

/// <summary>One thing to do, for a program.</summary>
internal sealed record PlanStepJson(string Words, string? Command);
