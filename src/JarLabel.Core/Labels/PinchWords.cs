namespace JarLabel.Core.Labels;

/// <summary>How a pinch of flakes dissolved, in words.</summary>
public static class PinchWords
{
    /// <summary>What stands in place of a day until which flakes are good, once they are not.</summary>
    public const string Unfit = "do not use";

    /// <summary><c>cloudy</c>.</summary>
    public static string Of(Pinch pinch) => pinch switch
    {
        Pinch.All => "all dissolved",
        Pinch.Cloudy => "cloudy",
        _ => "a gel",
    };

    /// <summary><c>cloudy, 3 May 2026</c>.</summary>
    public static string Of(PinchTest test) => $"{Of(test.Pinch)}, {DateWords.Of(test.Day)}";

    /// <summary>The same with what follows from it, for a screen.</summary>
    public static string WithAdvice(PinchTest test)
    {
        return Of(test) + (test.Pinch switch
        {
            Pinch.Gel => $": {Unfit}",
            Pinch.Cloudy => ": batches keep half as long",
            _ => "",
        });
    }
}
