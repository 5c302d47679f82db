namespace JarLabel.Operations.Air;

/// <summary>Draws what is in a room's air over time.</summary>
public static class DrawAirChart
{
    /// <summary>Writes the chart whole or not at all; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="air">What was answered for the room.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Do(Workbench bench, AirAssessment air, string file)
    {
        var text = AirChartText.For(air, bench.Metric);
        return DrawnPages.Write(bench, [AirChart.Of(air, text, new SkiaRuler())], text.Title, file);
    }
}
