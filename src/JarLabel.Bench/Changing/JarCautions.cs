using JarLabel.Core;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;
using JarLabel.Core.Mixing;

namespace JarLabel.Bench.Changing;

/// <summary>What goes through but should be known of a jar as it is now: its liquid, its glass, its flakes, where it may stand.</summary>
internal static class JarCautions
{
    internal static Problem[] Of(Workbench bench, Jar jar, HazardAssessment hazards) =>
    [
        .. OfLiquid(bench, jar).Concat(OfFlakes(bench, jar)).Concat(BatchCautions.OfLid(hazards)).Concat(StorageCautions.Of(jar.Container, hazards, bench.Catalog)).Distinct(),
    ];

    private static IEnumerable<Problem> OfLiquid(Workbench bench, Jar jar) => jar.Contents.Recipe is { } recipe
        ? jar.Contents.Solvents.SelectMany(s => BatchCautions.OfLiquid(recipe, bench.Catalog.SolventOf(s.Solvent)))
        : [];

    private static IEnumerable<Problem> OfFlakes(Workbench bench, Jar jar) => jar.Contents.Resins.SelectMany(r =>
    {
        var grade = bench.Catalog.GradeOf(r.Grade);
        return BatchCautions.OfJar(jar.Container, grade, bench.Catalog.Keeping.Find(grade.Keeping)!, r.FlakeDate, DateOnly.FromDateTime(jar.MixedAt), r.Cloudy);
    });
}
