namespace JarLabel.Tests.Layout.Designs;

public class DesignTests
{
    [Theory, CommonPractice]
    [InlineData("bag", LabelShape.Rectangle, 63.5, 33.9, 2)]
    [InlineData("bottle", LabelShape.Rectangle, 63.5, 38.1, 2)]
    [InlineData("card", LabelShape.Rectangle, 101, 148, 4)]
    [InlineData("full", LabelShape.Rectangle, 99, 67, 2)]
    [InlineData("lid", LabelShape.Round, 50, 50, 2.5)]
    [InlineData("long", LabelShape.Rectangle, 89, 36, 2)]
    [InlineData("notice", LabelShape.Rectangle, 279, 210, 7)]
    [InlineData("pillar", LabelShape.Rectangle, 62, 100, 2)]
    [InlineData("slip", LabelShape.Rectangle, 48.5, 25, 2)]
    [InlineData("small", LabelShape.Rectangle, 63.5, 25.4, 2)]
    [InlineData("standard", LabelShape.Rectangle, 63.5, 38.1, 2)]
    [InlineData("tag", LabelShape.Rectangle, 38.1, 21.2, 2)]
    [InlineData("tall", LabelShape.Rectangle, 57, 29, 2)]
    [InlineData("wide", LabelShape.Rectangle, 85, 50, 2)]
    public void A_design_is_for_labels_of_a_size(string id, LabelShape shape, double width, double height, double inset)
    {
        var design = LayoutFiles.Design(id);
        Assert.Equal((shape, width, height, inset), (design.Shape, design.Width, design.Height, design.Inset));
    }

    [Fact]
    public void Every_design_has_its_row_above()
    {
        var rows = typeof(DesignTests).GetMethod(nameof(A_design_is_for_labels_of_a_size))!
            .GetCustomAttributes(typeof(InlineDataAttribute), false).Cast<InlineDataAttribute>().Select(row => (string)row.Data[0]!);
        Assert.Equal(LayoutFiles.Ours.DesignIds.Order(StringComparer.Ordinal), rows.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_file_of_ours_is_without_fault_and_every_sheet_s_design_suits_it() => Assert.Empty(LayoutFiles.Ours.Check());

    // Table 1.3 asks, up to 3 L, for 52 x 74 mm if possible and for pictograms of 10 mm a side, which is 14.14 mm from tip to tip.
    [Theory, Cites(References.Clp, "Annex I 1.2.1.4 table 1.3")]
    [InlineData("full")]
    [InlineData("pillar")]
    [InlineData("card")]
    public void A_design_with_all_hazard_words_has_the_legal_sizes(string id)
    {
        var design = LayoutFiles.Design(id);
        var symbols = Boxes(design.Box).OfType<SymbolsBox>().Single(symbols => symbols.With is null);
        Assert.True(Math.Min(design.Width, design.Height) >= 52 && Math.Max(design.Width, design.Height) >= 74);
        Assert.True(symbols.Sizes[^1] >= 14.14, $"{symbols.Sizes[^1]}");
        Assert.Null(symbols.Frame.Drop);
    }

    [Theory]
    [InlineData("""{ "kind": "text", "word": "cutt", "voice": "say" }""", "/box/word", "cut, cutUnit")]
    [InlineData("""{ "kind": "text", "word": "cut", "voice": "shout" }""", "/box/voice", "say")]
    [InlineData("""{ "kind": "texts", "word": "cut", "voice": "say" }""", "/box/kind", "rows, columns")]
    [InlineData("""{ "kind": "rule", "thickness": 0.1 }""", "/box/thickness", "0.25")]
    [InlineData("""{ "kind": "symbols", "sizes": [10, 12] }""", "/box/sizes", "largest to the smallest")]
    [InlineData("""{ "kind": "tone", "side": 2, "voice": "say" }""", "/box/voice", "not known")]
    public void A_box_that_cannot_be_is_refused_with_its_place(string box, string where, string says)
    {
        var problem = Assert.Single(LayoutFiles.DesignOf(box).Problems, problem => problem.Where == "own.json#" + where);
        Assert.Equal("JL302", problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_type_size_off_the_scale_is_refused()
    {
        var text = """
            { "id": "own", "title": "own", "shape": "round", "width": 50, "height": 50, "inset": 2.4, "source": "practice",
              "voices": [{ "name": "say", "face": "regular", "sizes": [10, 7.5] }], "box": { "kind": "rows", "boxes": [{ "kind": "space" }] } }
            """u8;
        var problems = DesignReader.Read("own.json", text.ToArray()).Problems;
        Assert.Equal(
            ["own.json#/voices/0/sizes", "own.json#/inset", "own.json#/box"],
            problems.Select(problem => problem.Where));
    }

    // No type under 5.5 points, and the cut at least twice as large as the next voice of the same label.
    [Fact]
    public void The_cut_is_by_far_the_largest_and_nothing_is_too_small_to_read()
    {
        foreach (var design in LayoutFiles.Ours.DesignIds.Select(LayoutFiles.Design))
        {
            Assert.All(design.Voices, voice => Assert.True(voice.Sizes[^1] >= 5.5));
            var cut = design.Voices.FirstOrDefault(voice => voice.Name == "cut");
            if (cut is not null)
                Assert.All(design.Voices.Where(voice => voice != cut), voice => Assert.True(cut.Sizes[^1] >= 2 * voice.Sizes[0], design.Id));
        }
    }

    private static IEnumerable<Box> Boxes(Box box) => box is StackBox stack ? stack.Boxes.SelectMany(Boxes) : [box];
}
