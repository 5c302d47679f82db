using JarLabel.Core.Catalog;

namespace JarLabel.Core.Air;

/// <summary>Which of the published limits a room is reckoned by.</summary>
public static class GoverningLimit
{
    /// <summary>The lowest limit for a whole shift, or ceiling, of the region the rules belong to; where the region has none, the lowest
    /// of all. Null when nobody has published one.</summary>
    public static ExposureLimit? Of(Substance substance, RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(substance);
        var lasting = substance.ExposureLimits.Where(l => l.Kind is ExposureKind.Shift or ExposureKind.Ceiling).OrderBy(l => l.Ppm).ToArray();
        return lasting.FirstOrDefault(l => l.OnlyUnder == rules) ?? lasting.FirstOrDefault();
    }
}
