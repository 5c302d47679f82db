using JarLabel.Core.Catalog;

namespace JarLabel.Core.Air;

/// <summary>Which of the published limits a room is reckoned by.</summary>
public static class GoverningLimit
{
    /// <summary>The lowest of the limits of the region the rules belong to and of those heeded everywhere; where there is none, the lowest of all. What
    /// endangers life at once is no limit to work by. Null when nobody has published one.</summary>
    public static ExposureLimit? Of(Substance substance, RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(substance);
        var lasting = substance.ExposureLimits.Where(l => l.Kind != ExposureKind.Idlh).OrderBy(l => l.Ppm).ThenBy(l => l.Unverified).ToArray();
        return lasting.FirstOrDefault(l => l.OnlyUnder is null || l.OnlyUnder == rules) ?? lasting.FirstOrDefault();
    }
}
