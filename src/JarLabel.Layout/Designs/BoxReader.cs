namespace JarLabel.Layout.Designs;

/// <summary>Reads a design's tree of boxes. Each kind takes its own members and no others.</summary>
/// <param name="voices">The design's voices.</param>
internal sealed class BoxReader(IReadOnlyList<string> voices)
{
    private static readonly Dictionary<string, Func<BoxReader, FieldReader, Box>> Kinds = new(StringComparer.Ordinal)
    {
        ["rows"] = (reader, fields) => reader.Stack(fields, downwards: true),
        ["columns"] = (reader, fields) => reader.Stack(fields, downwards: false),
        ["text"] = (reader, fields) => reader.Text(fields),
        ["figure"] = (reader, fields) => reader.Figure(fields),
        ["list"] = (reader, fields) => reader.List(fields),
        ["table"] = (reader, fields) => reader.Table(fields),
        ["qr"] = (_, fields) => new QrBox(Frame(fields, "qr"), fields.Number("module", 0.3, 5), fields.Number("leastModule", 0.3, 5)),
        ["tone"] = (_, fields) => new ToneBox(Frame(fields, "tone"), fields.Number("side", 1, 50), LayoutKeywords.Flag(fields, "downwards")),
        ["symbols"] = (_, fields) => Symbols(fields),
        ["rule"] = (_, fields) => new RuleBox(Frame(fields, "rule"), fields.Number("thickness", 0.25, 10)),
        ["space"] = (_, fields) => new SpaceBox(Frame(fields, "space")),
    };

    internal Box Read(FieldReader fields) => fields.Choice("kind", Kinds)(this, fields);

    private static BoxFrame Frame(FieldReader fields, string name) => new(
        fields.OptionalText("name") ?? name,
        fields.OptionalNumber("width", 0, 2000),
        fields.OptionalNumber("height", 0, 2000),
        fields.OptionalNumber("grow", 0, 100) ?? 0,
        fields.Has("drop") ? fields.Count("drop", 1, 99) : null,
        LayoutKeywords.Optional(fields, "across", LayoutKeywords.Across) ?? Align.Start,
        LayoutKeywords.Optional(fields, "down", LayoutKeywords.Down) ?? Align.Start,
        LayoutKeywords.Flag(fields, "whenMoved"));

    private StackBox Stack(FieldReader fields, bool downwards) => new(
        Frame(fields, downwards ? "rows" : "columns"),
        downwards,
        fields.OptionalNumber("gap", 0, 100) ?? 0,
        fields.OptionalNumber("pad", 0, 100) ?? 0,
        LayoutKeywords.Optional(fields, "fill", LayoutKeywords.Inks),
        LayoutKeywords.Optional(fields, "ink", LayoutKeywords.Inks),
        fields.List("boxes", Read));

    private TextBox Text(FieldReader fields)
    {
        var word = Key(fields, "word", Vocabulary.Words);
        return new TextBox(
            Frame(fields, word),
            word,
            Voice(fields),
            LayoutKeywords.Optional(fields, "face", LayoutKeywords.Faces),
            LayoutKeywords.Optional(fields, "lines", 1, 50, 1),
            LayoutKeywords.Flag(fields, "trim"));
    }

    private FigureBox Figure(FieldReader fields)
    {
        var word = Key(fields, "word", Vocabulary.Words);
        return new FigureBox(Frame(fields, word), word, Voice(fields));
    }

    private ListBox List(FieldReader fields)
    {
        var list = Key(fields, "list", Vocabulary.Lists);
        return new ListBox(
            Frame(fields, list),
            list,
            Voice(fields),
            LayoutKeywords.Optional(fields, "face", LayoutKeywords.Faces),
            LayoutKeywords.Flag(fields, "running"),
            LayoutKeywords.Optional(fields, "least", 0, 99, 0),
            LayoutKeywords.Optional(fields, "most", 1, 99, 99));
    }

    private TableBox Table(FieldReader fields)
    {
        var table = Key(fields, "table", Vocabulary.Tables);
        var between = fields.Has("between") ? Key(fields, "between", Vocabulary.Words) : null;
        if (between is not null && fields.Has("perLine"))
            fields.Refuse("between", LayoutProblems.BetweenNeedsOnePerLine());
        return new TableBox(
            Frame(fields, table),
            table,
            Voice(fields),
            fields.List("columns", Column),
            LayoutKeywords.Optional(fields, "perLine", 1, 10, 1),
            fields.OptionalNumber("gap", 0, 100) ?? 1.5,
            fields.OptionalNumber("lineGap", 0, 100) ?? 3,
            fields.OptionalNumber("rowGap", 0, 100) ?? 0,
            fields.OptionalNumber("rule", 0.25, 5) ?? 0,
            LayoutKeywords.Flag(fields, "heading"),
            LayoutKeywords.Optional(fields, "least", 0, 99, 0),
            LayoutKeywords.Optional(fields, "most", 1, 99, 99),
            between);
    }

    private static TableColumn Column(FieldReader fields) => new(
        LayoutKeywords.Optional(fields, "face", LayoutKeywords.Faces),
        LayoutKeywords.Optional(fields, "across", LayoutKeywords.Across) ?? Align.Start,
        LayoutKeywords.Flag(fields, "grow"));

    private static SymbolsBox Symbols(FieldReader fields)
    {
        var sizes = fields.Numbers("sizes", 3, 500);
        LayoutKeywords.RequireFalling(fields, "sizes", sizes);
        return new SymbolsBox(
            Frame(fields, "symbols"),
            fields.Has("codes") ? fields.Texts("codes") : [],
            sizes,
            fields.OptionalNumber("gap", 0, 100) ?? 0.8,
            LayoutKeywords.Optional(fields, "perRow", 1, 20, 20),
            fields.Has("with") ? Key(fields, "with", Vocabulary.Words) : null,
            fields.OptionalText("unless"));
    }

    private string Voice(FieldReader fields)
    {
        var voice = fields.Text("voice");
        if (voice.Length > 0 && !voices.Contains(voice))
            fields.Refuse("voice", LayoutProblems.UnknownVoice(voice, voices));
        return voice;
    }

    private static string Key(FieldReader fields, string name, IReadOnlyList<string> known)
    {
        var key = fields.Text(name);
        if (key.Length > 0 && !known.Contains(key))
            fields.Refuse(name, LayoutProblems.UnknownKey(key, known));
        return key;
    }
}

/// <summary>The keys a design may name; a misspelt one would silently never be printed.</summary>
public static class Vocabulary
{
    /// <summary>Keys of single wordings.</summary>
    public static IReadOnlyList<string> Words { get; } =
    [
        "cut", "cutUnit", "cutMetric", "grade", "jar", "revision", "jarLine", "solvent", "contents", "batch", "amounts", "signal", "poison",
        "owner", "job", "note", "by", "mixedDate", "useByDate", "testDate", "readyDate", "keeping", "closing", "title", "subtitle", "moreOnCard", "stepsBetween", "advice", "danger", "warning", "lid", "rags", "dangers", "swallowed",
    ];

    /// <summary>Keys of lists of sentences.</summary>
    public static IReadOnlyList<string> Lists { get; } = ["hazards", "precautions", "firstAid", "handling", "rules", "figures", "sentences"];

    /// <summary>Keys of tables.</summary>
    public static IReadOnlyList<string> Tables { get; } = ["dates", "batch", "thinning", "history", "timeline", "stock", "air", "duties", "limits"];
}
