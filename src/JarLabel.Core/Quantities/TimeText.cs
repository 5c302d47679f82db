namespace JarLabel.Core.Quantities;

/// <summary>Reads a time: <c>1 h</c>, <c>45 min</c>, <c>1 h 30 min</c>.</summary>
public static class TimeText
{
    /// <summary>More than nothing, at most a thousand hours.</summary>
    public static Result<Duration> Read(string text, string where) =>
        AmountText.Read(text, UnitKind.Time, 3.6e6, where).Then<Duration>(size => Duration.FromSeconds(size));
}
