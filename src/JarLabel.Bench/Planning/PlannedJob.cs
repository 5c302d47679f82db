using JarLabel.Core;
using JarLabel.Core.Air;
using JarLabel.Core.Keeping;
using JarLabel.Core.Planning;

namespace JarLabel.Bench.Planning;

/// <summary>A job, planned. Nothing is recorded by it.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Plan">What it takes and where that comes from.</param>
/// <param name="Fresh">The dates of a batch mixed now.</param>
/// <param name="Air">What the thirstiest coat does to the room's air.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record PlannedJob(
    PlanRequest Request, JobPlan Plan, KeepingDates Fresh, AirAssessment Air, IReadOnlyList<PlanStep> Steps, IReadOnlyList<Problem> Cautions);
