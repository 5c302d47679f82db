namespace JarLabel.Core.Supplies;

/// <summary>Whether an event of a bag or bottle could have been recorded by this program: the rules of what is typed, for what comes from
/// elsewhere.</summary>
public static class SupplyEventCheck
{
    private const int LongestNote = 120;

    private static readonly string[] Undoable =
        [nameof(BagAdded), nameof(BottleAdded), nameof(FlakesLeft), nameof(SolventLeft), nameof(FlakesTested), nameof(BottleMoved), nameof(SupplyDiscarded)];

    /// <summary>Everything that it says and could not have been recorded.</summary>
    public static IReadOnlyList<Problem> Faults(SupplyEvent happened, string where)
    {
        var bounds = new EventBounds(where);
        bounds.Moment("at", happened.At);
        switch (happened)
        {
            case BagAdded bag:
                bounds.Text("grade", bag.Grade, EventBounds.LongestName);
                bounds.Amount("grams", bag.Weight.Grams);
                bounds.Day("made", bag.Made);
                bounds.Text("note", bag.Note, LongestNote);
                break;
            case BottleAdded bottle:
                bounds.Text("solvent", bottle.Solvent, EventBounds.LongestName);
                bounds.Amount("milliliters", bottle.Volume.Milliliters);
                bounds.Day("bought", bottle.Bought);
                bounds.Text("shelf", bottle.Shelf, EventBounds.LongestName);
                bounds.Demand(bottle.Material is not { } material || Enum.IsDefined(material), "material", $"{bottle.Material}", "a material that is known is");
                bounds.Text("note", bottle.Note, LongestNote);
                break;
            case FlakesTaken taken:
                bounds.Amount("grams", taken.Weight.Grams);
                break;
            case SolventTaken taken:
                bounds.Amount("milliliters", taken.Volume.Milliliters);
                break;
            case FlakesLeft left:
                bounds.Number("grams", left.Weight.Grams, 0, EventBounds.MostAmount);
                break;
            case SolventLeft left:
                bounds.Number("milliliters", left.Volume.Milliliters, 0, EventBounds.MostAmount);
                break;
            case BottleMoved moved:
                bounds.Text("shelf", moved.Shelf, EventBounds.LongestName);
                break;
            case SupplyDiscarded discarded:
                bounds.Text("why", discarded.Why, LongestNote);
                break;
            case SupplyUndone undone:
                bounds.Word("what", undone.What, Undoable);
                break;
            case SupplyLabelled labelled:
                JarEventCheck.Check(bounds, labelled.File, labelled.Design, labelled.Sheet, labelled.Position, labelled.Payload, labelled.Sha256);
                break;
            default:
                break;
        }

        return bounds.Problems;
    }
}
