namespace JarLabel.Acceptance;

/// <summary>A printer is measured, what was measured is kept, and labels are placed by it.</summary>
public sealed class CalibrateTests : IDisposable
{
    private const string Sheet = "letter-2x5-101.6x50.8";

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void What_was_measured_moves_the_labels_of_that_sheet_and_printer_and_no_others()
    {
        Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "2", "--fill", "1 pt", "--solvent", "ethanol-95", "--no-label").ExitCode);
        var plain = Cut("label", "1", "--sheet", Sheet, "--start", "1");
        var kept = shop.Json("calibrate", "--sheet", Sheet, "--printer", "Bench laser", "--dx", "0.8", "--dy", "-0,5 mm")["kept"]!;
        Assert.Equal(0.8, kept["shiftXMillimeters"]!.GetValue<double>());
        var other = Cut("label", "1", "--sheet", Sheet, "--start", "3");
        var moved = Cut("label", "1", "--sheet", Sheet, "--start", "5", "--printer", "bench laser");

        // Places 3 and 5 are one and two rows of 50.8 mm further down; printed 0.8 too far right and 0.5 too high, so told 0.8 left and 0.5 down.
        Assert.Equal(plain.X, other.X, 0.05);
        Assert.Equal(plain.Y + 50.8, other.Y, 0.05);
        Assert.Equal(plain.X - 0.8, moved.X, 0.1);
        Assert.Equal(plain.Y + 101.6 + 0.5, moved.Y, 0.1);
        Assert.Equal(0, shop.Run("calibrate", "--sheet", "letter-3x10-66.7x25.4", "--printer", "Bench laser", "--dx", "0.4").ExitCode);
        Assert.Equal(0, shop.Run("calibrate", "--sheet", Sheet, "--printer", "Bench laser", "--forget").ExitCode);
        Assert.Equal(plain.X, Cut("label", "1", "--sheet", Sheet, "--start", "7", "--printer", "Bench laser").X, 0.05);
    }

    /// <summary>Under a misspelled name the labels would lose what was measured, and nobody would know why they miss their places.</summary>
    [Fact]
    public void A_printer_that_nobody_measured_or_named_is_refused_with_those_there_are()
    {
        Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "2", "--fill", "1 pt", "--solvent", "ethanol-95", "--no-label").ExitCode);
        Assert.Equal(0, shop.Run("calibrate", "--sheet", Sheet, "--printer", "Bench laser", "--dx", "0.8").ExitCode);
        var run = shop.Run("label", "1", "--printer", "Bench lasr");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL356: --printer:", run.Errors, StringComparison.Ordinal);
        Assert.Contains("did you mean \"Bench laser\"?", run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(shop.Labels) && Directory.GetFiles(shop.Labels).Length > 0);
        Assert.Equal(0, shop.Run("shop", "set", "printer", "back room=ipp://127.0.0.1:1/ipp/print").ExitCode);
        Assert.Equal(0, shop.Run("label", "1", "--printer", "back room").ExitCode);
        Assert.Equal(0, shop.Run("label", "1", "--printer", "BENCH LASER").ExitCode);
    }

    [Fact]
    public void The_page_says_what_to_measure_and_what_to_type()
    {
        var file = shop.Json("calibrate", "--sheet", Sheet)["file"]!.GetValue<string>();
        var text = OutsideProgram.PdfToText.Run("-layout", file, "-");
        foreach (var part in (string[])["actual size", "--sx 199/200", "--last-dx", $"jarlabel calibrate --sheet {Sheet}", "0.42 mm, 5 dots"])
        {
            Assert.Contains(part, text, StringComparison.Ordinal);
        }

        OutsideProgram.Qpdf.Run("--check", file);
    }

    [Fact]
    public void What_cannot_be_is_refused_with_its_cause()
    {
        (string Code, string Says, string[] Wish)[] cases =
        [
            ("JL350", "scaling is on in the print dialog", ["--sx", "194/200"]),
            ("JL350", "scaling is on in the print dialog", ["--dy", "0", "--last-dy", "5.5"]),
            ("JL351", "paper size", ["--dx", "9"]),
            ("JL352", "--dy", ["--last-dy", "0.4"]),
            ("JL354", "millimetres", ["--dx", "left"]),
            ("JL355", "199/200", ["--sy", "0"]),
            ("JL353", "forget", ["--forget"]),
        ];
        foreach (var (code, says, wish) in cases)
        {
            var run = shop.Run(["calibrate", "--sheet", Sheet, .. wish]);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(code, run.Errors, StringComparison.Ordinal);
            Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        }

        Assert.False(File.Exists(Path.Combine(shop.Folder, "calibration.json")) && File.ReadAllText(Path.Combine(shop.Folder, "calibration.json")).Contains(Sheet, StringComparison.Ordinal));
    }

    /// <summary>The top left corner of the word "cut" on the first page, mm from the page's top left.</summary>
    private (double X, double Y) Cut(params string[] arguments)
    {
        using var pdf = PdfDocument.Open(shop.Json(arguments)["label"]!["file"]!.GetValue<string>());
        var page = pdf.GetPage(1);
        var word = page.GetWords().First(found => found.Text == "cut").BoundingBox;
        return (word.Left * 25.4 / 72, (page.Height - word.Top) * 25.4 / 72);
    }
}
