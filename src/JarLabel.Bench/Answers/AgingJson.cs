using JarLabel.Core.Keeping;

namespace JarLabel.Bench.Answers;

/// <summary>How many times faster jars age when they are 10 °C warmer, for a program.</summary>
internal sealed record AgingJson(double TimesPerTenKelvin, double Low, double High, bool Settled)
{
    internal static AgingJson Of(AgingEstimate e) => new(e.Q10, e.Low, e.High, e.Set);
}
