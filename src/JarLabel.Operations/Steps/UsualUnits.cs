namespace JarLabel.Operations.Steps;

/// <summary>Units that an amount is tapped in beside its figure, those of the shop first.</summary>
internal static class UsualUnits
{
    private static readonly string[] MetricVolumes = ["mL", "L"], UsVolumes = ["fl oz", "pt", "qt", "gal"], MetricMasses = ["g", "kg"], UsMasses = ["oz", "lb"];

    internal static IReadOnlyList<(string Value, string Words)> Volumes(Workbench bench) => Ordered(bench, MetricVolumes, UsVolumes);

    internal static IReadOnlyList<(string Value, string Words)> Masses(Workbench bench) => Ordered(bench, MetricMasses, UsMasses);

    internal static IReadOnlyList<(string Value, string Words)> Temperatures(Workbench bench) => bench.Metric ? [("C", "°C"), ("F", "°F")] : [("F", "°F"), ("C", "°C")];

    private static IReadOnlyList<(string Value, string Words)> Ordered(Workbench bench, string[] metric, string[] us) =>
        [.. (bench.Metric ? metric.Concat(us) : us.Concat(metric)).Select(unit => (unit, unit))];
}
