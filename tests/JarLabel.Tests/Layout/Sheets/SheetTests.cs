namespace JarLabel.Tests.Layout.Sheets;

public class SheetTests
{
    private const string Good = """
        { "id": "own", "title": "Own", "paper": { "width": 210, "height": 297 }, "shape": "rectangle", "width": 100, "height": 50,
          "left": 5, "top": 10, "columns": 2, "pitchX": 100, "rows": 5, "pitchY": 55, "design": "small", "source": "practice" }
        """;

    // The dimensions are those common label stock is sold by; page sizes are US Letter (215.9 x 279.4) and ISO 216 A4, A6. From memory.
    [Theory, CommonPractice]
    [InlineData("a4-2x4-99.1x67.7", 210, 297, 8, 99.1, 67.7, 205.35, 283.9)]
    [InlineData("a4-2x7-99.1x38.1", 210, 297, 14, 99.1, 38.1, 205.35, 281.85)]
    [InlineData("a4-3x7-63.5x38.1", 210, 297, 21, 63.5, 38.1, 202.79, 281.85)]
    [InlineData("a4-3x8-63.5x33.9", 210, 297, 24, 63.5, 33.9, 202.79, 284.1)]
    [InlineData("a4-4x10-48.5x25.4", 210, 297, 40, 48.5, 25.4, 202, 275.5)]
    [InlineData("a4-5x13-38.1x21.2", 210, 297, 65, 38.1, 21.2, 205.33, 286.3)]
    [InlineData("card-101.6x152.4", 101.6, 152.4, 1, 101.6, 152.4, 101.6, 152.4)]
    [InlineData("card-76.2x127", 76.2, 127, 1, 76.2, 127, 76.2, 127)]
    [InlineData("card-85x55", 85, 55, 1, 85, 55, 85, 55)]
    [InlineData("card-a6", 105, 148, 1, 105, 148, 105, 148)]
    [InlineData("letter-2x3-101.6x84.7", 215.9, 279.4, 6, 101.6, 84.667, 211.9315, 266.701)]
    [InlineData("letter-2x5-101.6x50.8", 215.9, 279.4, 10, 101.6, 50.8, 211.9315, 266.7)]
    [InlineData("letter-2x5-cards-88.9x50.8", 215.9, 279.4, 10, 88.9, 50.8, 196.85, 266.7)]
    [InlineData("letter-3x10-66.7x25.4", 215.9, 279.4, 30, 66.675, 25.4, 211.1375, 266.7)]
    [InlineData("letter-3x4-round-50.8", 215.9, 279.4, 12, 50.8, 50.8, 200.025, 263.526)]
    [InlineData("notice-a4", 297, 210, 1, 297, 210, 297, 210)]
    [InlineData("notice-letter", 279.4, 215.9, 1, 279.4, 215.9, 279.4, 215.9)]
    [InlineData("roll-101.6x152.4", 101.6, 152.4, 1, 101.6, 152.4, 101.6, 152.4)]
    [InlineData("roll-50x25", 50, 25, 1, 50, 25, 50, 25)]
    [InlineData("roll-57x32", 57, 32, 1, 57, 32, 57, 32)]
    [InlineData("roll-62x100", 62, 100, 1, 62, 100, 62, 100)]
    [InlineData("roll-62x29", 62, 29, 1, 62, 29, 62, 29)]
    [InlineData("roll-89x36", 89, 36, 1, 89, 36, 89, 36)]
    [InlineData("roll-round-50", 50, 50, 1, 50, 50, 50, 50)]
    public void A_sheet_has_the_dimensions_it_is_sold_by(
        string id, double paperWidth, double paperHeight, int places, double width, double height, double right, double bottom)
    {
        var sheet = LayoutFiles.Sheet(id);
        var last = sheet.AreaAt(sheet.Places);
        Assert.Equal((paperWidth, paperHeight, places), (sheet.PaperWidth, sheet.PaperHeight, sheet.Places));
        Assert.Equal((width, height), (last.Width, last.Height));
        Assert.Equal(right, last.X + last.Width, 0.001);
        Assert.Equal(bottom, last.Y + last.Height, 0.001);
    }

    [Fact]
    public void Every_sheet_has_its_row_above()
    {
        var rows = typeof(SheetTests).GetMethod(nameof(A_sheet_has_the_dimensions_it_is_sold_by))!
            .GetCustomAttributes(typeof(InlineDataAttribute), false).Cast<InlineDataAttribute>().Select(row => (string)row.Data[0]!);
        Assert.Equal(LayoutFiles.Ours.SheetIds.Order(StringComparer.Ordinal), rows.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Places_run_along_the_rows_from_the_top_left()
    {
        var sheet = LayoutFiles.Sheet("letter-3x10-66.7x25.4");
        Assert.Equal((4.7625, 12.7), (sheet.AreaAt(1).X, sheet.AreaAt(1).Y));
        Assert.Equal((74.6125, 12.7), (sheet.AreaAt(2).X, sheet.AreaAt(2).Y));
        Assert.Equal(4.7625, sheet.AreaAt(4).X);
        Assert.Equal(38.1, sheet.AreaAt(4).Y, 9);
        Assert.Throws<ArgumentOutOfRangeException>(() => sheet.AreaAt(31));
        Assert.Throws<ArgumentOutOfRangeException>(() => sheet.AreaAt(0));
    }

    [Fact]
    public void Labels_lie_on_the_sheet_and_do_not_overlap()
    {
        foreach (var sheet in LayoutFiles.Ours.SheetIds.Select(LayoutFiles.Sheet))
        {
            var areas = Enumerable.Range(1, sheet.Places).Select(sheet.AreaAt).ToList();
            Assert.All(areas, area => Assert.True(
                area.X >= 0 && area.Y >= 0 && area.X + area.Width <= sheet.PaperWidth + 0.02 && area.Y + area.Height <= sheet.PaperHeight + 0.02, sheet.Id));
            for (var one = 0; one < areas.Count; one++)
            {
                for (var other = one + 1; other < areas.Count; other++)
                {
                    var apart = Math.Abs(areas[one].X - areas[other].X) >= sheet.Width - 0.02 || Math.Abs(areas[one].Y - areas[other].Y) >= sheet.Height - 0.02;
                    Assert.True(apart, $"{sheet.Id} {one + 1} {other + 1}");
                }
            }
        }
    }

    [Theory]
    [InlineData("\"columns\": 2", "\"columns\": 3", "/columns", "The last label ends at 305 mm")]
    [InlineData("\"pitchX\": 100", "\"pitchX\": 90", "/pitchX", "would overlap")]
    [InlineData("\"rows\": 5", "\"rows\": 6", "/rows", "335 mm")]
    [InlineData("\"id\": \"own\"", "\"id\": \"other\"", "/id", "file's name")]
    [InlineData("\"rectangle\"", "\"round\"", "/height", "one diameter")]
    [InlineData("\"rectangle\"", "\"oval\"", "/shape", "rectangle, round")]
    [InlineData("\"left\": 5", "\"lefft\": 5", "/lefft", "not known")]
    public void A_sheet_that_cannot_be_is_refused_with_its_place(string good, string bad, string where, string says)
    {
        var problems = SheetReader.Read("own.json", Encoding.UTF8.GetBytes(Good.Replace(good, bad, StringComparison.Ordinal))).Problems;
        var problem = Assert.Single(problems, problem => problem.Where == "own.json#" + where);
        Assert.Equal("JL301", problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_of_the_refusals_is_good_as_it_stands() => Assert.True(SheetReader.Read("own.json", Encoding.UTF8.GetBytes(Good)).Ok);
}
