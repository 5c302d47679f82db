namespace JarLabel.Core.Air;

/// <summary>Concentration over time, for a chart.</summary>
public static class AirCurve
{
    /// <summary>Points at even steps from the start: rising while the liquid evaporates, falling afterwards.</summary>
    /// <param name="answer">What was answered for the room.</param>
    /// <param name="length">How long the curve runs.</param>
    /// <param name="steps">How many steps, at least 1.</param>
    public static IReadOnlyList<AirPoint> Of(AirAssessment answer, Duration length, int steps)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 1);
        return [.. Enumerable.Range(0, steps + 1).Select(i => length * ((double)i / steps)).Select(t => new AirPoint(t, PpmAt(answer, t)))];
    }

    /// <summary>All vapours together at a moment after the start.</summary>
    public static double PpmAt(AirAssessment answer, Duration elapsed)
    {
        var (question, over) = (answer.Question, answer.Question.Over ?? Duration.Zero);
        return elapsed < over
            ? answer.Parts.Sum(p => Rising(p, question, over, elapsed))
            : answer.PeakPpm * RoomAir.FractionLeft(question.EffectiveChangesPerHour, elapsed - over);
    }

    private static double Rising(VaporPart part, AirQuestion question, Duration over, Duration elapsed)
    {
        var ppm = 1e6 * RoomAir.FractionAfter(part.Vapor / over, question.Room, question.EffectiveChangesPerHour, elapsed);
        return Math.Min(ppm, Vapor.SaturatedPpm(part.Substance, question.Temperature) ?? 1e6);
    }
}

/// <summary>One point of a curve of concentration over time.</summary>
/// <param name="Elapsed">Since the evaporating began.</param>
/// <param name="Ppm">All vapours together, ppm by volume.</param>
public readonly record struct AirPoint(Duration Elapsed, double Ppm);
