using JarLabel.Bench.Labels;
using JarLabel.Core;
using JarLabel.Core.Air;
using JarLabel.Core.Labels;
using JarLabel.Layout.Charts;
using JarLabel.Render;

namespace JarLabel.Bench.Air;

/// <summary>Draws what is in a room's air over time. It belongs to no jar, so the ledger knows nothing of it.</summary>
public static class DrawAirChart
{
    /// <summary>Writes the chart whole or not at all; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="air">What was answered for the room.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Do(Workbench bench, AirAssessment air, string file)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(air);
        ArgumentNullException.ThrowIfNull(file);
        var text = AirChartText.For(air, bench.Metric);
        return LabelFiles.Bytes(file, [AirChart.Of(air, text, new SkiaRuler())], text.Title, bench.Now).Then(bytes => bench.DryRun ? file : Write(file, bytes));
    }

    private static Result<string> Write(string file, byte[] bytes)
    {
        var part = Path.Combine(Path.GetDirectoryName(file)!, $".{Guid.NewGuid():N}.part");
        try
        {
            File.WriteAllBytes(part, bytes);
            File.Move(part, file, overwrite: true);
            return file;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            if (File.Exists(part))
            {
                File.Delete(part);
            }

            return BenchProblems.ChartNotWritten(file, fault.Message);
        }
    }
}
