namespace JarLabel.Operations.Mixing;

/// <summary>A batch that somebody wants to mix.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Solvent">The alcohol.</param>
/// <param name="Batch">The cut and how much.</param>
/// <param name="Container">What it goes into.</param>
/// <param name="Form">The form of the flakes; null for the grade's usual one.</param>
/// <param name="FlakeDate">The flakes' own date, where known.</param>
/// <param name="Bench">Temperature at the bench; null for 20 °C.</param>
/// <param name="Shelf">The shelf it goes to; null for the shop's first.</param>
/// <param name="By">Who mixes.</param>
/// <param name="Job">What for.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record MixRequest(
    Grade Grade,
    Solvent Solvent,
    BatchRequest Batch,
    Container Container,
    LacForm? Form = null,
    DateOnly? FlakeDate = null,
    Temperature? Bench = null,
    string? Shelf = null,
    string? By = null,
    string? Job = null,
    string? Note = null,
    LabelChoice? Label = null)
{
    /// <summary>The bag that the flakes come from; null when nobody said.</summary>
    public SupplyNumber? Bag { get; init; }

    /// <summary>The bottle that the alcohol comes from; null when nobody said.</summary>
    public SupplyNumber? Bottle { get; init; }
}
