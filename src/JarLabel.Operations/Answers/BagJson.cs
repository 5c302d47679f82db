namespace JarLabel.Operations.Answers;

/// <summary>A bag of flakes for a program.</summary>
internal sealed record BagJson(int Number, string Id, string Grade, double BoughtGrams, double LeftGrams, string Made, bool OnHand, string? Note)
{
    /// <summary>How a pinch of it last dissolved: all, cloudy or gel.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Pinch { get; init; }

    /// <summary>When.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? PinchTested { get; init; }

    /// <summary>False when nothing is to be mixed from it.</summary>
    public bool Fit { get; init; }

    internal static BagJson Of(Bag bag) => new(
        bag.Number.Value, bag.Number.ToString(), bag.Grade, bag.Bought.Grams, bag.Left.Grams, Day(bag.Made), bag.OnHand, bag.Note)
    {
        Pinch = bag.Test?.Pinch.ToString().ToLowerInvariant(),
        PinchTested = bag.Test is { } test ? Day(test.Day) : null,
        Fit = !bag.Unfit,
    };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
