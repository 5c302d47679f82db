using JarLabel.Core;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Bench.Typing;

/// <summary>How much is taken out of a jar.</summary>
/// <param name="Volume">So much; null for all.</param>
public readonly record struct TakenText(Volume? Volume)
{
    /// <summary>Reads <c>100 mL</c> or <c>all</c>.</summary>
    public static Result<TakenText> Read(string text, string where) =>
        text.Trim().Equals("all", StringComparison.OrdinalIgnoreCase) ? default(TakenText) : VolumeText.Read(text, where).Then<TakenText>(v => new TakenText(v));
}
