namespace JarLabel.Store.Sheets;

/// <summary>A sheet of label stock that has been begun.</summary>
/// <param name="Number">Which sheet: every new one gets the next number.</param>
/// <param name="Stock">The id of its sheet layout.</param>
/// <param name="Places">How many labels it holds; they are counted from 1 in reading order.</param>
/// <param name="Taken">The places that are used.</param>
/// <param name="IsOpen">False once another sheet of the stock was begun or this one was put away.</param>
public sealed record SheetInUse(int Number, string Stock, int Places, IReadOnlySet<int> Taken, bool IsOpen)
{
    /// <summary>The free places, in order.</summary>
    public IEnumerable<int> Free => Enumerable.Range(1, Places).Where(place => !Taken.Contains(place));
}
