namespace JarLabel.Core.Labels;

/// <summary>Where liquid goes that nobody wants any more. Common practice; what a place asks for is local.</summary>
public static class WasteWords
{
    /// <summary>On the wall.</summary>
    public const string ToThePoint = "To the hazardous-waste point, never the drain.";

    /// <summary>Beside a jar or bottle that is thrown away.</summary>
    public const string OfWhatIsLeft = ToThePoint + " What is left in it burns, and so do the fumes of an empty one: hand it in as the local rules say, closed and with its label on.";
}
