using JarLabel.Store.Printers;

namespace JarLabel.Tests.Store;

public sealed class CalibrationFileTests
{
    private static readonly Calibration Measured = new("bench", "letter-2x4", 0.5, -0.25, 1, 1.002, new DateOnly(2026, 3, 9));

    [Fact]
    public void What_was_measured_is_kept_as_it_was()
    {
        using var shop = TempShop.With(jars: 1);
        CalibrationFile.Keep(shop.Folder, Measured).Require();
        Assert.Equal(Measured, Assert.Single(CalibrationFile.Read(shop.Folder).Require()));
    }

    [Theory]
    [InlineData("2026-03-09", "9 March", "Read \"9 March\" as the day it was measured; write it as 2026-03-09.")]
    [InlineData("0.5", "500", "shiftX")]
    [InlineData("sheet", "shet", "shet")]
    [InlineData("]", "", "")]
    public void A_damaged_file_is_told_and_nothing_is_written_over_it(string found, string put, string says)
    {
        using var shop = TempShop.With(jars: 1);
        CalibrationFile.Keep(shop.Folder, Measured).Require();
        var written = File.ReadAllText(shop.Folder.Calibrations).Replace(found, put, StringComparison.Ordinal);
        File.WriteAllText(shop.Folder.Calibrations, written);
        var problems = CalibrationFile.Read(shop.Folder).Problems;
        Assert.Equal(["JL423"], problems.Select(problem => problem.Code).Distinct());
        Assert.Contains(problems, problem => $"{problem.Where} {problem.Message}".Contains(says, StringComparison.Ordinal));
        Assert.Contains("JL423", CalibrationFile.Keep(shop.Folder, Measured with { ShiftX = 1 }).Problems.Select(problem => problem.Code));
        Assert.Contains("JL423", CalibrationFile.Forget(shop.Folder, "bench", "letter-2x4").Problems.Select(problem => problem.Code));
        Assert.Equal(written, File.ReadAllText(shop.Folder.Calibrations));
    }
}
