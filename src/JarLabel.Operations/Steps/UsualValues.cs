namespace JarLabel.Operations.Steps;

/// <summary>Values that a bench asks for most, to tap with wet hands. Common practice.</summary>
internal static class UsualValues
{
    /// <summary>Wash coat, sealer, padding, bodying, build.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Cuts(Workbench bench) => [.. ((double[])[0.5, 1, 1.5, 2, 3]).Select(cut => (cut.ToString("0.#", CultureInfo.InvariantCulture), VulgarFraction.Of(cut)))];

    /// <summary>Jars as they are sold, in the shop's own measure.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Jars(Workbench bench) => Same(bench.Metric ? ["125 mL", "250 mL", "500 mL", "1 L"] : ["4 fl oz", "1/2 pt", "1 pt", "1 qt"]);

    /// <summary>Alcohol as it is poured, in the shop's own measure.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Pours(Workbench bench) => Same(bench.Metric ? ["100 mL", "250 mL", "500 mL", "1 L"] : ["4 fl oz", "1/2 pt", "1 pt", "1 qt"]);

    /// <summary>Of what is in a jar.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Parts(Workbench bench) => Same(["half", "all"]);

    private static IReadOnlyList<(string Value, string Words)> Same(string[] values) => [.. values.Select(value => (value, value))];
}
