namespace JarLabel.Tests.Layout;

public class ComposerTests
{
    private static readonly FakeRuler Ruler = new();

    // With the hand ruler a character is 0.5 x 10 pt = 1.7639 mm wide: 26 characters fill 45.86 of the 46 mm, 27 need 47.6.
    [Theory]
    [InlineData(26, 10)]
    [InlineData(27, 8)]
    [InlineData(32, 8)]
    public void A_line_is_set_in_the_largest_size_that_fits(int characters, double points)
    {
        var marks = Place("""{ "kind": "text", "word": "note", "voice": "say" }""", new string('x', characters)).Require().Marks;
        Assert.Equal(points, Assert.IsType<TextMark>(Assert.Single(marks)).Points);
    }

    // 33 characters of 8 pt need 33 x 1.4111 = 46.6 mm.
    [Fact]
    public void A_line_that_does_not_fit_names_its_box_what_it_needs_and_what_there_is()
    {
        var problem = Assert.Single(Place("""{ "kind": "text", "word": "note", "voice": "say" }""", new string('x', 33)).Problems);
        Assert.Equal(("JL310", "own/note"), (problem.Code, problem.Where));
        Assert.Contains("46.6 mm", problem.Message, StringComparison.Ordinal);
        Assert.Contains("46.0 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_most_telling_wording_that_fits_is_taken()
    {
        var text = Text(("note", [new string('x', 40), "thirty-two characters, no more..", "short"]));
        var label = Composer.Place(text, LayoutFiles.DesignOf("""{ "kind": "text", "word": "note", "voice": "say" }""").Require(), LayoutFiles.Area(), Ruler);
        Assert.Equal("thirty-two characters, no more..", ((TextMark)label.Require().Marks[0]).Text);
    }

    // Lines stand 1.2 x 8 pt = 3.387 mm apart; the first baseline lies a capital's height (0.7 x 8 pt = 1.976 mm) under the inset.
    [Fact]
    public void Long_text_is_broken_at_spaces_and_set_from_the_inset()
    {
        var marks = Place("""{ "kind": "text", "word": "note", "voice": "say", "lines": 2, "height": 6.5 }""", "twenty characters ok and twenty more of them").Require().Marks;
        var lines = marks.Cast<TextMark>().ToList();
        Assert.Equal(["twenty characters ok and twenty", "more of them"], lines.Select(line => line.Text));
        Assert.Equal((2, 3.976), (lines[0].X, Math.Round(lines[0].Baseline, 3)));
        Assert.Equal(3.387, lines[1].Baseline - lines[0].Baseline, 3);
    }

    [Fact]
    public void What_has_no_room_is_left_out_from_the_end_and_told()
    {
        const string box = """{ "kind": "list", "list": "hazards", "voice": "say", "height": 6.5, "drop": 1, "least": 1 }""";
        var text = Text() with { Lists = new Dictionary<string, IReadOnlyList<string>> { ["hazards"] = ["first", "second", "third", "fourth"] } };
        var label = Composer.Place(text, LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area(), Ruler).Require();
        Assert.Equal(["first", "second"], label.Marks.Cast<TextMark>().Select(mark => mark.Text));
        Assert.Equal(["third", "fourth"], Assert.Single(label.Moved).Texts);
    }

    [Fact]
    public void Lower_drop_numbers_go_first()
    {
        const string box = """
            { "kind": "rows", "height": 7, "boxes": [
              { "kind": "text", "word": "owner", "voice": "say", "drop": 2 },
              { "kind": "text", "word": "note", "voice": "say", "drop": 1 },
              { "kind": "text", "word": "by", "voice": "say" }] }
            """;
        var label = Composer.Place(Text(("owner", ["owner"]), ("note", ["note"]), ("by", ["by"])), LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area(), Ruler).Require();
        Assert.Equal(["owner", "by"], label.Marks.Cast<TextMark>().Select(mark => mark.Text));
    }

    [Fact]
    public void Height_that_is_missing_is_told_with_its_box()
    {
        var problem = Assert.Single(Place("""{ "kind": "text", "word": "note", "voice": "say", "height": 2 }""", "x").Problems);
        Assert.Equal(("JL311", "own/note"), (problem.Code, problem.Where));
    }

    [Theory, Cites(References.Iso18004, "version 40-M holds 2331 bytes")]
    [InlineData(2331, "")]
    [InlineData(2332, "JL320")]
    public void A_code_that_no_symbol_holds_is_refused_with_how_long_it_would_be(int length, string code)
    {
        var placed = PlaceNote(Text(("note", ["x"])) with { Code = "http://bench.local/".PadRight(length, 'x') });
        Assert.Equal(code, string.Join(' ', placed.Problems.Select(problem => problem.Code)));
        Assert.All(placed.Problems, problem => Assert.Contains("would have to hold 2332 characters", problem.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_symbol_without_a_drawing_is_refused_with_those_that_have_one()
    {
        var problem = Assert.Single(PlaceNote(Text(("note", ["x"])) with { Pictograms = ["GHS02", "GHS99"] }).Problems);
        Assert.Equal("JL321", problem.Code);
        Assert.Contains("the symbol \"GHS99\"", problem.Message, StringComparison.Ordinal);
        Assert.Contains("GHS02", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_too_small_for_the_design_is_refused()
    {
        var placed = Composer.Place(SampleLabels.All["typical"], LayoutFiles.Design("wide"), LayoutFiles.Sheet("a4-3x7-63.5x38.1").AreaAt(1), Ruler);
        Assert.Equal("JL306", Assert.Single(placed.Problems).Code);
    }

    // 0.508 mm is 6 dots at 300 dpi; at 203 dpi 4 dots are 0.5005 mm.
    [Theory, CommonPractice]
    [InlineData(300, 0.508)]
    [InlineData(600, 0.508)]
    [InlineData(203, 0.5005)]
    public void Code_modules_are_whole_printer_dots(int dpi, double module)
    {
        var area = LayoutFiles.Sheet("a4-3x7-63.5x38.1").AreaAt(1) with { Dpi = dpi };
        var code = Composer.Place(SampleLabels.All["typical"], LayoutFiles.Design("standard"), area, new SkiaRuler()).Require().Marks.OfType<QrMark>().Single();
        Assert.Equal(module, code.Module, 4);
        Assert.Equal(Math.Round(code.X / 25.4 * dpi), code.X / 25.4 * dpi, 6);
    }

    [Theory]
    [InlineData("1½", "1", "1", "2")]
    [InlineData("¾", null, "3", "4")]
    [InlineData("2", "2", null, null)]
    public void A_fraction_is_stacked_and_still_found_as_one_word(string cut, string? whole, string? over, string? under)
    {
        var marks = Composer.Place(
            Text(("cut", [cut])), LayoutFiles.DesignOf("""{ "kind": "figure", "word": "cut", "voice": "say" }""").Require(), LayoutFiles.Area(), Ruler).Require().Marks;
        var seen = marks.OfType<TextMark>().Where(mark => mark.Ink == Ink.Black).Select(mark => mark.Text);
        Assert.Equal(new[] { whole, over, under }.Where(part => part is not null), seen);
        Assert.Contains(marks.OfType<TextMark>(), mark => mark.Text == cut);
    }

    [Fact]
    public void Every_design_takes_every_sample_in_real_type_and_passes_preflight()
    {
        var ruler = new SkiaRuler();
        foreach (var sheet in LayoutFiles.Ours.SheetIds.Select(LayoutFiles.Sheet))
        {
            foreach (var (name, text) in SampleLabels.For(sheet.Design))
            {
                var label = Composer.Place(text, LayoutFiles.Design(sheet.Design), sheet.AreaAt(sheet.Places), ruler);
                Assert.True(label.Ok, $"{sheet.Id} {name}: {string.Join("; ", label.Problems)}");
                Assert.Empty(new Preflight(ruler).Check(label.Require(), sheet.PaperWidth, sheet.PaperHeight));
            }
        }
    }

    [Fact]
    public void A_failed_test_stands_on_every_label_in_the_place_of_the_use_by()
    {
        var ruler = new SkiaRuler();
        foreach (var sheet in LayoutFiles.Ours.SheetIds.Select(LayoutFiles.Sheet).Where(sheet => sheet.Design != "notice"))
        {
            foreach (var (name, sample) in SampleLabels.For(sheet.Design))
            {
                var text = sample with
                {
                    Words = new Dictionary<string, IReadOnlyList<string>>(sample.Words) { ["useByDate"] = ["test failed 21 May 2026", "failed 21 May 2026", "test failed"] },
                    Tables = new Dictionary<string, IReadOnlyList<IReadOnlyList<string>>>(sample.Tables) { ["dates"] = [["mixed", "1 May 2026"], ["test failed", "21 May 2026"], ["do not use", "as a finish"]] },
                };
                var label = Composer.Place(text, LayoutFiles.Design(sheet.Design), sheet.AreaAt(sheet.Places), ruler);
                Assert.True(label.Ok, $"{sheet.Id} {name}: {string.Join("; ", label.Problems)}");
                Assert.Contains(label.Require().Marks.OfType<TextMark>(), mark => mark.Text.Contains("failed", StringComparison.Ordinal));
                Assert.Empty(new Preflight(ruler).Check(label.Require(), sheet.PaperWidth, sheet.PaperHeight));
            }
        }
    }

    // Four sentences, of which the design wants two at most: whatever room there is, the label says where the others are.
    [Theory]
    [InlineData(2, false)]
    [InlineData(4, true)]
    public void A_list_that_the_design_cuts_short_brings_the_line_that_says_where_the_rest_is(int sentences, bool told)
    {
        const string box = """
            { "kind": "rows", "boxes": [
              { "kind": "list", "list": "precautions", "voice": "say", "drop": 1, "most": 2 },
              { "kind": "text", "word": "moreOnCard", "voice": "say", "whenMoved": true }] }
            """;
        var text = Text(("moreOnCard", ["all phrases: jar card"])) with { Lists = new Dictionary<string, IReadOnlyList<string>> { ["precautions"] = [.. Enumerable.Range(1, sentences).Select(n => $"say {n}")] } };
        var label = Composer.Place(text, LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area(), Ruler).Require();
        Assert.Equal(told, label.Marks.OfType<TextMark>().Any(mark => mark.Text == "all phrases: jar card"));
        Assert.Equal(told, label.Moved.Count > 0);
    }

    // 10 mm take three lines of 8 pt (1.98 + 2 x 3.39 + 0.71 = 9.5 mm): the beginning, the line between, the newest.
    [Theory]
    [InlineData(3, "step 1|step 2|step 3")]
    [InlineData(4, "step 1|2 more|step 4")]
    [InlineData(120, "step 1|118 more|step 120")]
    public void A_history_keeps_its_beginning_and_its_end_and_counts_what_is_between(int steps, string shown)
    {
        const string box = """{ "kind": "table", "table": "history", "voice": "say", "columns": [{}, { "grow": true }], "height": 10, "drop": 1, "least": 2, "between": "stepsBetween" }""";
        var text = Text(("stepsBetween", ["{0} more"])) with
        {
            Tables = new Dictionary<string, IReadOnlyList<IReadOnlyList<string>>> { ["history"] = [.. Enumerable.Range(1, steps).Select(n => (IReadOnlyList<string>)["9 Mar", $"step {n}"])] },
        };
        var label = Composer.Place(text, LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area(), Ruler).Require();
        var marks = label.Marks.OfType<TextMark>().ToList();
        Assert.Equal(shown.Split('|'), marks.Where(mark => mark.Text is not ("9 Mar" or "…")).Select(mark => mark.Text));
        Assert.Equal(steps - shown.Split('|').Count(line => line.StartsWith("step", StringComparison.Ordinal)), label.Moved.Sum(moved => moved.Texts.Count));
        Assert.DoesNotContain(label.Moved.SelectMany(moved => moved.Texts), moved => moved.EndsWith($"step {steps}", StringComparison.Ordinal));
    }

    // The white between the fourth square and the ring is that between any two squares, on every printer.
    [Theory]
    [InlineData(300, false)]
    [InlineData(203, true)]
    public void The_ring_of_a_waxy_grade_stands_clear_of_the_square_beside_it(int dpi, bool blackOnly)
    {
        foreach (var downwards in (bool[])[false, true])
        {
            var box = $$"""{ "kind": "tone", "side": 1.4, "downwards": {{(downwards ? "true" : "false")}} }""";
            var text = Text() with { Tone = new Tone(5, true) };
            var label = Composer.Place(text, LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area() with { Dpi = dpi, BlackOnly = blackOnly }, Ruler).Require();
            var bars = label.Marks.OfType<BarMark>().Where(bar => bar.Ink == Ink.Black).Select(bar => downwards ? (From: -bar.Y - bar.Height, To: -bar.Y) : (From: bar.X, To: bar.X + bar.Width)).ToList();
            var ring = bars.MaxBy(bar => bar.To - bar.From);
            var squares = bars.Where(bar => bar.From < ring.From).OrderBy(bar => bar.From).ToList();
            Assert.Equal(4, squares.Count);
            Assert.Equal(squares[1].From - squares[0].To, ring.From - squares[3].To, 0.13);
            Assert.True(ring.From - squares[3].To >= 0.24, $"{ring.From - squares[3].To} mm");
        }
    }

    [Fact]
    public void The_card_leaves_nothing_out()
    {
        var card = LayoutFiles.Sheet("card-a6");
        Assert.All(SampleLabels.All.Values, text =>
            Assert.DoesNotContain(
                Composer.Place(text, LayoutFiles.Design("card"), card.AreaAt(1), new SkiaRuler()).Require().Moved,
                moved => moved.Box is "hazards" or "precautions" or "poison" or "symbols"));
    }

    // Any shop's words either stand inside the inset or are refused with the box's name; nothing is clipped.
    [Fact]
    public void Random_texts_fit_or_name_a_box()
    {
        var words = Gen.String[Gen.Char["abcdefghij klmnopqrstuvwxyzÄ ½-/"], 1, 120];
        var design = LayoutFiles.Design("standard");
        var area = LayoutFiles.Sheet("a4-3x7-63.5x38.1").AreaAt(5);
        Gen.Select(words, words, words.Array[0, 9]).Sample(
            (grade, solvent, hazards) =>
            {
                if (string.IsNullOrWhiteSpace(grade) || string.IsNullOrWhiteSpace(solvent) || hazards.Any(string.IsNullOrWhiteSpace))
                    return true;
                var text = SampleLabels.All["typical"];
                text = text with
                {
                    Words = new Dictionary<string, IReadOnlyList<string>>(text.Words) { ["grade"] = [grade], ["solvent"] = [solvent] },
                    Lists = new Dictionary<string, IReadOnlyList<string>>(text.Lists) { ["hazards"] = hazards },
                };
                return Composer.Place(text, design, area, Ruler).TryGet(out var label, out var problems)
                    ? new Preflight(Ruler).Check(label, 210, 297).Count == 0
                    : problems.Count > 0 && problems.All(problem => problem.Where!.StartsWith("standard/", StringComparison.Ordinal));
            },
            iter: 2000);
    }

    private static Result<PlacedLabel> Place(string box, string note) =>
        Composer.Place(Text(("note", [note])), LayoutFiles.DesignOf(box).Require(), LayoutFiles.Area(), Ruler);

    private static Result<PlacedLabel> PlaceNote(LabelText text) =>
        Composer.Place(text, LayoutFiles.DesignOf("""{ "kind": "text", "word": "note", "voice": "say" }""").Require(), LayoutFiles.Area(), Ruler);

    private static LabelText Text(params (string Key, string[] Wordings)[] words) => new(
        words.ToDictionary(word => word.Key, word => (IReadOnlyList<string>)word.Wordings, StringComparer.Ordinal),
        new Dictionary<string, IReadOnlyList<string>>(),
        new Dictionary<string, IReadOnlyList<IReadOnlyList<string>>>(),
        [],
        null,
        null);
}
