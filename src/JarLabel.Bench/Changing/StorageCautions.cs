using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>The storage rules that a container passes, as cautions: they hold in workplaces, and the local fire code comes first.</summary>
internal static class StorageCautions
{
    internal static IEnumerable<Problem> Of(Container container, HazardAssessment hazards, ShopCatalog catalog) => container.Holds is not { } holds
        ? []
        : StorageAdvice.PassedBy(holds, container.Material.Word(), hazards.FlammableCategory, hazards.Rules, catalog)
            .Select(limit => BenchProblems.StoragePassed(limit));
}
