namespace JarLabel.Operations.Keeping;

/// <summary>Draws how long kinds of jars keep: the curve, its band, the use-by age, and the tests it stands on.</summary>
public static class DrawLives
{
    /// <summary>Writes the drawing whole or not at all, a page for each kind; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="kinds">The kinds; a picture holds one.</param>
    /// <param name="lives">What all tests together say.</param>
    /// <param name="tested">The batches that say it.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Do(Workbench bench, IReadOnlyList<LifeClass> kinds, LearnedLives lives, TestedBatches tested, string file)
    {
        return kinds.Count switch
        {
            0 => OperationProblems.NoKindToDraw(),
            > 1 when !file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase) => OperationProblems.OneKindAPicture(file, kinds),
            _ => DrawnPages.Write(bench, [.. Pages(bench, kinds, lives, tested)], "How long jars keep", file),
        };
    }

    private static IEnumerable<Page> Pages(Workbench bench, IReadOnlyList<LifeClass> kinds, LearnedLives lives, TestedBatches tested)
    {
        var (stillGood, ruler) = (bench.Settings.Learning.StillGood, new SkiaRuler());
        foreach (var kind in kinds)
        {
            var life = lives.Of(kind);
            var jars = tested.Batches.Where(t => t.Tested.Class == kind)
                .Select(t => LifeChartJar.Of(t.Mother, t.Tested.Tests))
                .OfType<LifeChartJar>()
                .Take(LifeChart.MostJars)
                .ToArray();
            yield return LifeChart.Of(life, stillGood, lives.Band(kind, LifeChart.BandShares), jars, LifeChartText.For(life, stillGood, jars.Length, bench.Catalog), ruler);
        }
    }
}
