namespace JarLabel.Operations.Answers;

/// <summary>What is said of label stock and of the sheets in use.</summary>
internal static class SheetAnswer
{
    /// <summary>One kind of stock, drawn.</summary>
    internal static Answer Drawn(Workbench bench, Sheet sheet)
    {
        var screen = new Screen().Title(sheet.Title).Gap().Drawing(SheetDrawing.Of(sheet));
        return Answer.Of(screen.Next(JarToName.Label(bench, ("sheet", sheet.Id))), new SheetsAnswerJson([SheetJson.Of(sheet)]), c => c.SheetsAnswerJson);
    }

    /// <summary>All there is.</summary>
    internal static Answer All(Workbench bench, IReadOnlyList<Sheet> sheets) => Answer.Of(
        new Screen().Title($"{sheets.Count} kinds of stock").Gap()
            .Table(["id", "drawn", " labels", " mm wide", " mm high", "usual design"], [.. sheets.Select(Row)])
            .Next(JarToName.Label(bench, ("sheet", sheets[0].Id))),
        new SheetsAnswerJson([.. sheets.Select(SheetJson.Of)]),
        c => c.SheetsAnswerJson);

    /// <summary>Sheets in use.</summary>
    internal static Answer Open(Workbench bench, IReadOnlyList<OpenSheet> sheets)
    {
        var screen = sheets.Count == 0 ? new Screen().Title("No sheet is open; the first label opens one.") : new Screen();
        foreach (var sheet in sheets)
        {
            Draw(screen, sheet);
        }

        return Answer.Of(screen.Next(JarToName.Label(bench)), new SheetsInUseJson([.. sheets.Select(s => SheetInUseJson.Of(s.InUse))]), c => c.SheetsInUseJson);
    }

    /// <summary>A small picture: each free place by its number, a used one as a cross.</summary>
    private static void Draw(Screen screen, OpenSheet sheet)
    {
        var (used, columns) = (sheet.InUse, sheet.Stock?.Columns ?? 1);
        if (screen.Blocks.Count > 0)
        {
            screen.Gap();
        }

        screen.Title(string.Create(CultureInfo.InvariantCulture, $"Sheet {used.Number} of {used.Stock}: {used.Free.Count()} of {used.Places} places free")).Gap()
            .Drawing(Enumerable.Range(1, used.Places).Chunk(columns).Select(row => string.Concat(row.Select(place => "[" + Sign(used.Taken.Contains(place), place) + "]"))));
    }

    private static string Sign(bool taken, int place) => (taken ? "x" : place.ToString(CultureInfo.InvariantCulture)).PadLeft(3);

    private static string[] Row(Sheet sheet) => [sheet.Id, Small(sheet), Figure(sheet.Places), Figure(sheet.Width), Figure(sheet.Height), sheet.Design];

    // One row of the sheet and how many there are.
    private static string Small(Sheet sheet) =>
        string.Concat(Enumerable.Repeat(sheet.Shape == LabelShape.Round ? "()" : "[]", sheet.Columns)) + (sheet.Rows > 1 ? string.Create(CultureInfo.InvariantCulture, $" x{sheet.Rows}") : "");

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}

/// <summary>A sheet in use for a program; places are counted from 1 in reading order.</summary>
internal sealed record SheetInUseJson(int Number, string Stock, int Places, IReadOnlyList<int> Taken, IReadOnlyList<int> Free, bool Open)
{
    internal static SheetInUseJson Of(SheetInUse sheet) => new(sheet.Number, sheet.Stock, sheet.Places, [.. sheet.Taken.Order()], [.. sheet.Free], sheet.IsOpen);
}

/// <summary>Label stock for a program.</summary>
internal sealed record SheetJson(string Id, string Title, int Places, double WidthMillimeters, double HeightMillimeters, double PaperWidthMillimeters, double PaperHeightMillimeters, string Design)
{
    internal static SheetJson Of(Sheet sheet) => new(sheet.Id, sheet.Title, sheet.Places, sheet.Width, sheet.Height, sheet.PaperWidth, sheet.PaperHeight, sheet.Design);
}

/// <summary>What <c>sheets</c> says to a program.</summary>
internal sealed record SheetsAnswerJson(IReadOnlyList<SheetJson> Sheets);

/// <summary>What the commands about sheets in use say to a program.</summary>
internal sealed record SheetsInUseJson(IReadOnlyList<SheetInUseJson> Sheets);
