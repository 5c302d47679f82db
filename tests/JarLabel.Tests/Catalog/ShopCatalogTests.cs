namespace JarLabel.Tests.Catalog;

public class ShopCatalogTests
{
    [Fact]
    public void The_catalog_as_it_comes_has_no_fault()
    {
        var loaded = Load(ShopCatalog.FileNames.Select(name => (name, "[]")).ToArray());
        Assert.Empty(loaded.Problems);
        Assert.NotEmpty(loaded.Require().Solvents.Rows);
    }

    [Theory]
    [InlineData("garnett", "garnet")]
    [InlineData("lemmon", "lemon")]
    [InlineData("buton", "button")]
    public void A_grade_typed_wrong_is_told_the_nearest_and_all_that_are_allowed(string typed, string nearest)
    {
        var problem = Assert.Single(ShopCatalog.Ours.Grades.Named(typed, "grade").Problems);
        Assert.Equal("JL201", problem.Code);
        Assert.Equal("grade", problem.Where);
        Assert.Contains($"Did you mean \"{nearest}", problem.Message, StringComparison.Ordinal);
        Assert.Contains("seedlac", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_is_near_nothing_gets_no_guess()
    {
        var problem = Assert.Single(ShopCatalog.Ours.Solvents.Named("turpentine").Problems);
        Assert.DoesNotContain("Did you mean", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Ethanol-95", "ethanol-95")]
    [InlineData(" ethanol-190-proof ", "ethanol-95")]
    public void Capitals_blanks_and_aliases_are_understood(string typed, string id) =>
        Assert.Equal(id, ShopCatalog.Ours.Solvents.Named(typed).Require().Id);

    [Fact]
    public void A_shop_lays_its_own_solvent_over_ours_and_beside_it()
    {
        const string own = """
            [
              // the drum in the yard
              { "id": "drum", "name": "the drum", "shortName": "drum",
                "contains": [{ "byWeight": [{ "of": "ethanol", "parts": 3 }, { "of": "methanol", "parts": 1 }] }], "source": "practice", },
              { "id": "ethanol-99", "name": "ours", "shortName": "ours", "contains": [{ "ethanolByVolume": 99.5 }], "source": "practice" },
            ]
            """;
        var catalog = Load(("shop/catalog/solvents.json", own)).Require();
        Assert.Equal(25m, catalog.Solvents.Named("drum").Require().Composition.PercentOf("methanol"));
        Assert.Equal("ours", catalog.Solvents.Named("ethanol-99").Require().Name);
        Assert.Equal(ShopCatalog.Ours.Solvents.Rows.Count + 1, catalog.Solvents.Rows.Count);
    }

    [Fact]
    public void A_row_laid_over_ours_stays_in_its_place()
    {
        const string own = """[{ "id": "button", "name": "pucks", "hoursAt20C": 90, "source": "practice" }, { "id": "dust", "name": "dust", "hoursAt20C": 0.5, "source": "practice" }]""";
        Assert.Equal(["flakes", "pucks", "seed", "ground", "dust"], Load(("forms.json", own)).Require().Forms.Rows.Select(f => f.Name));
    }

    [Fact]
    public void All_faults_of_all_files_are_told_at_once_each_with_its_place()
    {
        var problems = Load(
            ("shop/grades.json", """[{ "id": "x", "name": "", "color": "red", "darkness": 9, "waxy": 1, "keeping": "waxy", "form": "flake", "note": "n", "source": "practice" }]"""),
            ("keeping.json", "[{ \"id\": null }]"),
            ("sheets.json", "[]")).Problems;
        Assert.Equal(
            [
                "JL205 sheets.json",
                "JL202 shop/grades.json#/0/name", "JL202 shop/grades.json#/0/darkness", "JL202 shop/grades.json#/0/waxy",
                "JL202 keeping.json#/0/id", "JL202 keeping.json#/0", "JL202 keeping.json#/0", "JL202 keeping.json#/0",
            ],
            problems.Select(p => $"{p.Code} {p.Where}"));
    }

    [Theory]
    [InlineData("""{ "of": "ethanole", "parts": 1 }""", "JL204", "Did you mean \"ethanol\"?")]
    [InlineData("""{ "of": "denatonium", "parts": 1 }""", "JL207", "has no density")]
    [InlineData("""{ "of": "odd", "parts": 1 }""", "JL206", "made of itself")]
    public void A_solvent_that_cannot_be_made_is_refused(string part, string code, string says)
    {
        var text = $$"""[{ "id": "odd", "name": "odd", "shortName": "odd", "contains": [{ "byVolume": [{{part}}] }], "source": "practice" }]""";
        var problem = Assert.Single(Load(("solvents.json", text)).Problems);
        Assert.Equal(code, problem.Code);
        Assert.Equal("solvents.json (odd)", problem.Where);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "JL202", "\"hazards\" is missing")]
    [InlineData("\"hazards\": [],", "JL202", "\"acuteToxicity\" is missing")]
    [InlineData("\"hazards\": [{ \"class\": \"acute-oral-3\", \"source\": \"practice\" }], \"acuteToxicity\": [],", "JL209", "is computed")]
    [InlineData("\"hazards\": [{ \"class\": \"nettle\", \"source\": \"practice\" }], \"acuteToxicity\": [],", "JL204", "the hazard class")]
    [InlineData("\"lelPercent\": { \"value\": 1, \"source\": \"practice\" }, \"uelPercent\": { \"value\": 9, \"source\": \"practice\" }, \"hazards\": [], \"acuteToxicity\": [],", "JL211", "warn of fire")]
    public void A_substance_that_would_lose_a_warning_is_refused(string members, string code, string says)
    {
        var problems = Load(("substances.json", $$"""[{ "id": "turps", "name": "turps", {{members}} "source": "practice" }]""")).Problems;
        Assert.Contains(problems, p => p.Code == code && p.Message.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_given_twice_is_refused_by_the_name_the_user_knows() =>
        Assert.Equal("JL208 b/forms.json", string.Join(' ', Load(("a/forms.json", "[]"), ("b/forms.json", "[]")).Problems.Select(p => $"{p.Code} {p.Where}")));

    [Fact]
    public void An_id_may_stand_only_once()
    {
        const string twice = """[{ "id": "a", "hoursAt20C": 1, "name": "a", "source": "practice" }, { "id": "A", "hoursAt20C": 2, "name": "a", "source": "practice" }]""";
        Assert.Equal("JL203", Assert.Single(Load(("forms.json", twice)).Problems).Code);
    }

    [Theory]
    [InlineData("""[{ "id": "a", "hoursAt20C": 1, "hoursAt20C": 9, "name": "a", "source": "practice" }]""", "forms.json#/0/hoursAt20C")]
    [InlineData("""[{ "id": "a", "hoursAt20C": 1, "name": { "x": [ { "y": 1, "y": 2 } ] }, "source": "practice" }]""", "forms.json#/0/name/x/0/y")]
    public void A_member_that_stands_twice_is_told_with_its_place(string rows, string where) =>
        Assert.Contains(where, Load(("forms.json", rows)).Problems.Where(p => p.Message.Contains("stands twice", StringComparison.Ordinal)).Select(p => p.Where));

    private static Result<ShopCatalog> Load(params (string File, string Text)[] files) =>
        ShopCatalog.Load(files.Select(f => (f.File, (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(f.Text))));
}
