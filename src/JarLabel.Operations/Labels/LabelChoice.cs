namespace JarLabel.Operations.Labels;

/// <summary>Which label is wanted; what is null is the shop's or the program's choice.</summary>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Start">The place on the sheet, from 1; null for the next free one.</param>
public sealed record LabelChoice(string? Design = null, string? Sheet = null, int? Start = null)
{
    /// <summary>How many of each label, from 1.</summary>
    public int Copies { get; init; } = 1;

    /// <summary>True for pure black and white whatever the stock.</summary>
    public bool Mono { get; init; }

    /// <summary>The printer whose calibration counts; null for what was measured without naming one.</summary>
    public string? Printer { get; init; }

    /// <summary>True when that printer was named for its calibration alone, so that nobody else asks whether there is one.</summary>
    public bool LaidOutOnly { get; init; }
}
