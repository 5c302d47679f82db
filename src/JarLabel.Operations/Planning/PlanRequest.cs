namespace JarLabel.Operations.Planning;

/// <summary>A job that somebody wants to mix for.</summary>
/// <param name="Lines">What is to be covered, and how.</param>
/// <param name="Grade">The flakes.</param>
/// <param name="Solvent">The alcohol.</param>
/// <param name="Room">Air in the room.</param>
/// <param name="Over">How long a coat takes to dry.</param>
/// <param name="Bench">How warm it is at the bench; 20 °C when null.</param>
/// <param name="Calendar">The calendar file to write; null for none.</param>
public sealed record PlanRequest(
    IReadOnlyList<JobLine> Lines, Grade Grade, Solvent Solvent, Volume Room, Duration Over, Temperature? Bench = null, string? Calendar = null);
