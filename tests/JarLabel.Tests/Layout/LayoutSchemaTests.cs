using Json.Schema;
using Vocabulary = JarLabel.Layout.Designs.Vocabulary;

namespace JarLabel.Tests.Layout;

/// <summary>The schemas that editors complete sheets and designs by, before a schema library of other people, and side by side with our reader.</summary>
public class LayoutSchemaTests
{
    private static readonly JsonDocumentOptions Lenient = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private static readonly JsonSchema Sheets = Schema("sheet.schema.json");
    private static readonly JsonSchema Labels = Schema("label.schema.json");

    private const string Sheet = """
        { "$schema": "../sheet.schema.json", "id": "own", "title": "Own", "paper": { "width": 210, "height": 297 }, "shape": "rectangle", "width": 100, "height": 50,
          "left": 5, "top": 10, "columns": 2, "pitchX": 100, "rows": 5, "pitchY": 55, "dpi": 203, "ink": "black", "design": "small", "source": "practice" }
        """;

    private const string Design = """
        { "$schema": "../label.schema.json", "id": "own", "title": "own", "shape": "rectangle", "width": 50, "height": 30, "inset": 2, "source": "practice",
          "voices": [{ "name": "say", "face": "regular", "sizes": [10, 8] }],
          "box": { "kind": "rows", "gap": 1, "boxes": [ { "kind": "text", "word": "grade", "voice": "say", "lines": 2 }, { "kind": "qr", "module": 0.51, "leastModule": 0.42 } ] } }
        """;

    public static TheoryData<string> SheetFiles() => [.. Files("sheets")];

    public static TheoryData<string> LabelFiles() => [.. Files("labels")];

    public static TheoryData<string> Keys() => [.. Vocabulary.Words];

    [Theory]
    [MemberData(nameof(SheetFiles))]
    public void A_sheet_of_ours_is_valid(string file) => Assert.True(Valid(Sheets, File.ReadAllText(file)));

    [Theory]
    [MemberData(nameof(LabelFiles))]
    public void A_design_of_ours_is_valid(string file) => Assert.True(Valid(Labels, File.ReadAllText(file)));

    [Fact]
    public void The_files_of_the_refusals_are_good_as_they_stand()
    {
        Assert.True(Valid(Sheets, Sheet) && SheetRead(Sheet));
        Assert.True(Valid(Labels, Design) && DesignRead(Design));
    }

    [Theory]
    [InlineData("\"columns\": 2", "\"columns\": 0")]
    [InlineData("\"columns\": 2", "\"columns\": 2.5")]
    [InlineData("\"columns\": 2", "\"colums\": 2")]
    [InlineData("\"rectangle\"", "\"oval\"")]
    [InlineData("\"width\": 100,", "")]
    [InlineData("\"width\": 100", "\"width\": \"100\"")]
    [InlineData("\"width\": 210", "\"width\": 3")]
    [InlineData("\"height\": 297", "\"depth\": 297")]
    [InlineData("\"dpi\": 203", "\"dpi\": 20")]
    [InlineData("\"ink\": \"black\"", "\"ink\": \"grey\"")]
    [InlineData("\"ink\": \"black\"", "\"ink\": null")]
    [InlineData("\"left\": 5", "\"left\": -5")]
    [InlineData("\"title\": \"Own\"", "\"title\": \"\"")]
    [InlineData("\"design\": \"small\",", "")]
    public void A_wrong_sheet_is_refused_by_schema_and_reader(string good, string bad)
    {
        var wrong = Changed(Sheet, good, bad);
        Assert.False(Valid(Sheets, wrong));
        Assert.False(SheetRead(wrong));
    }

    [Theory]
    [InlineData("\"sizes\": [10, 8]", "\"sizes\": [10, 7.5]")]
    [InlineData("\"sizes\": [10, 8]", "\"sizes\": []")]
    [InlineData("\"face\": \"regular\"", "\"face\": \"italic\"")]
    [InlineData("\"kind\": \"rows\"", "\"kind\": \"row\"")]
    [InlineData("\"word\": \"grade\"", "\"word\": \"price\"")]
    [InlineData("\"lines\": 2", "\"lines\": 0")]
    [InlineData("\"lines\": 2", "\"line\": 2")]
    [InlineData("\"module\": 0.51, ", "")]
    [InlineData("\"inset\": 2", "\"inset\": 1")]
    [InlineData("\"gap\": 1", "\"gap\": true")]
    [InlineData("\"voice\": \"say\", ", "")]
    [InlineData("\"source\": \"practice\",", "")]
    public void A_wrong_design_is_refused_by_schema_and_reader(string good, string bad)
    {
        var wrong = Changed(Design, good, bad);
        Assert.False(Valid(Labels, wrong));
        Assert.False(DesignRead(wrong));
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Every_word_there_is_completes(string word)
    {
        var good = Changed(Design, "\"word\": \"grade\"", $"\"word\": \"{word}\"");
        Assert.True(Valid(Labels, good));
        Assert.True(DesignRead(good));
    }

    [Fact]
    public void Every_list_and_table_there_is_completes()
    {
        foreach (var list in Vocabulary.Lists)
            Assert.True(Valid(Labels, Changed(Design, "\"kind\": \"text\", \"word\": \"grade\", \"voice\": \"say\", \"lines\": 2", $"\"kind\": \"list\", \"list\": \"{list}\", \"voice\": \"say\"")), list);
        foreach (var table in Vocabulary.Tables)
            Assert.True(Valid(Labels, Changed(Design, "\"kind\": \"text\", \"word\": \"grade\", \"voice\": \"say\", \"lines\": 2", $"\"kind\": \"table\", \"table\": \"{table}\", \"voice\": \"say\", \"columns\": [{{}}]")), table);
    }

    private static string Changed(string file, string good, string bad)
    {
        Assert.Contains(good, file, StringComparison.Ordinal);
        return file.Replace(good, bad, StringComparison.Ordinal);
    }

    private static bool SheetRead(string json) => SheetReader.Read("own.json", Encoding.UTF8.GetBytes(json)).Ok;

    private static bool DesignRead(string json) => DesignReader.Read("own.json", Encoding.UTF8.GetBytes(json)).Ok;

    private static bool Valid(JsonSchema schema, string json)
    {
        using var document = JsonDocument.Parse(json, Lenient);
        return schema.Evaluate(document.RootElement).IsValid;
    }

    private static JsonSchema Schema(string name) => JsonSchema.FromText(File.ReadAllText(Path.Combine(Checkout.Root, "layouts", name)));

    private static IEnumerable<string> Files(string folder) => Directory.GetFiles(Path.Combine(Checkout.Root, "layouts", folder), "*.json").Order(StringComparer.Ordinal);
}
