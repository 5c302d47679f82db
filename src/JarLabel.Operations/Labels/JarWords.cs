namespace JarLabel.Operations.Labels;

/// <summary>A jar's hazards and printed words in this shop.</summary>
public static class JarWords
{
    /// <summary>What the jar's contents, or what an emptied jar held last, are under the rules that apply.</summary>
    public static HazardAssessment Hazards(Workbench bench, Jar jar)
    {
        (Solvent Solvent, Mass Weight)[] poured = [.. jar.Held.Solvents.Select(s => (bench.Catalog.SolventOf(s.Solvent), s.Weight))];
        return MixtureClassifier.Classify(JarComposition.Possible(poured, jar.Held.Flakes, bench.Catalog), bench.Rules, bench.Catalog)
            .PouredFrom(poured.Select(p => p.Solvent));
    }

    /// <summary>Everything that may be printed of the jar, so that the typeface can draw it.</summary>
    public static LabelText Of(Workbench bench, JarHistory history, HazardAssessment hazards)
    {
        var settings = bench.Settings;
        return OwnWords.Drawn(JarLabelText.For(new LabelFacts(
            history.Jar, [.. history.Events.Select(e => e.Event)], hazards, bench.Catalog, settings.Name, settings.Contact, settings.BaseUrl?.ToString())
        { PoisonCenter = settings.PoisonCenter }), new SkiaRuler());
    }
}
