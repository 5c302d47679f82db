namespace JarLabel.Layout.Designs;

/// <summary>Reads one design file. The members are described in <c>layouts/README.md</c>.</summary>
public static class DesignReader
{
    /// <summary>White kept at the edge of a rectangle: feed ±1 mm and cutting 1.6 mm.</summary>
    public const double LeastInset = 2;

    /// <summary>White kept at the edge of a round label.</summary>
    public const double LeastRoundInset = 2.5;

    /// <summary>Reads and checks it: known keys and voices, sizes on the scale, names told apart.</summary>
    /// <param name="file">The file's name; without its folder and ending it must be the design's id.</param>
    /// <param name="utf8">The file's bytes.</param>
    public static Result<Design> Read(string file, ReadOnlyMemory<byte> utf8) =>
        StrictJson.ReadObject(file, LayoutProblems.DesignFile, utf8, fields => Checked(fields, file, Take(fields)));

    private static Design Take(FieldReader fields)
    {
        LayoutKeywords.Schema(fields);
        var voices = fields.List("voices", TakeVoice);
        var boxes = new BoxReader([.. voices.Select(voice => voice.Name)]);
        return new Design(
            fields.Text("id"),
            fields.Text("title"),
            fields.Choice("shape", LayoutKeywords.Shapes),
            fields.Number("width", 5, 2000),
            fields.Number("height", 5, 2000),
            fields.Number("inset", 0, 50),
            voices,
            fields.Member("box", boxes.Read),
            fields.Text("source"));
    }

    private static Voice TakeVoice(FieldReader fields)
    {
        var sizes = fields.Numbers("sizes", 1, 1000);
        foreach (var size in sizes.Where(size => !TypeScale.Points.Contains(size)))
            fields.Refuse("sizes", LayoutProblems.NotOnTheScale(size, TypeScale.Points));
        LayoutKeywords.RequireFalling(fields, "sizes", sizes);
        return new Voice(fields.Text("name"), fields.Choice("face", LayoutKeywords.Faces), sizes);
    }

    private static Design Checked(FieldReader fields, string file, Design design)
    {
        if (design.Id != Path.GetFileNameWithoutExtension(file))
            fields.Refuse("id", LayoutProblems.IdIsNotFileName(design.Id, file));
        var least = design.Shape == LabelShape.Round ? LeastRoundInset : LeastInset;
        if (design.Inset < least)
            fields.Refuse("inset", LayoutProblems.InsetTooSmall(design.Inset, least));
        if (design.Shape == LabelShape.Round)
            CheckBands(fields, design.Box);
        foreach (var twice in Names(design.Box).GroupBy(name => name, StringComparer.Ordinal).Where(group => group.Count() > 1))
            fields.Refuse("box", LayoutProblems.NameUsedTwice(twice.Key));
        return design;
    }

    private static void CheckBands(FieldReader fields, Box outermost)
    {
        if (outermost is not StackBox { Downwards: true } rows)
        {
            fields.Refuse("box", LayoutProblems.RoundNeedsRows());
            return;
        }

        foreach (var band in rows.Boxes.Where(band => band.Frame.Height is null))
            fields.Refuse("box", LayoutProblems.BandNeedsHeight(band.Frame.Name));
    }

    // Stacks, rules and white may share their kind's name: nothing is ever said about them that their contents would not say better.
    private static IEnumerable<string> Names(Box box) => box switch
    {
        StackBox stack => stack.Boxes.SelectMany(Names),
        RuleBox or SpaceBox => [],
        _ => [box.Frame.Name],
    };
}

/// <summary>The only type sizes there are, so that labels, cards and notices look like one family.</summary>
public static class TypeScale
{
    /// <summary>The sizes, in points.</summary>
    public static IReadOnlyList<double> Points { get; } =
        [5.5, 6, 6.5, 7, 8, 9, 10, 11, 12, 14, 17, 20, 24, 28, 34, 40, 48, 56, 62, 68, 80, 88, 96, 120, 144];
}
