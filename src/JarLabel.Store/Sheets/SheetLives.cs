namespace JarLabel.Store.Sheets;

/// <summary>Holds events of sheets that come from elsewhere, one after the other, against what can have happened to a sheet.</summary>
internal sealed class SheetLives
{
    /// <summary>The most places a sheet file may have: 50 columns of 100 rows.</summary>
    private const int MostPlaces = 5000;

    private readonly Dictionary<int, int> begun = [];

    /// <summary>Why the event cannot have happened; null when it can.</summary>
    internal Problem? Refusal(EventRow row)
    {
        if (row.Kind is not (SheetEvents.Begun or SheetEvents.Taken or SheetEvents.TakenBack or SheetEvents.PutAway))
        {
            return ExchangeProblems.NotASheetEvent("", row.Kind, "a sheet is begun, its places are taken and taken back, and it is put away.");
        }

        var read = StrictJson.ReadObject("", ExchangeProblems.FormCode, Encoding.UTF8.GetBytes(row.Body), fields => Why(row, fields));
        return read.TryGet(out var why, out var problems)
            ? why.Length == 0 ? null : ExchangeProblems.NotASheetEvent("", row.Kind, why)
            : ExchangeProblems.NotASheetEvent("", row.Kind, problems[0].Message);
    }

    private string Why(EventRow row, FieldReader fields) => row.Kind switch
    {
        SheetEvents.Begun => Begin(row.Of.Number, fields.Text("stock"), fields.Count("places", 1, MostPlaces)),
        SheetEvents.Taken or SheetEvents.TakenBack => Of(row.Of.Number, fields.Numbers("places", 1, MostPlaces)),
        _ => Of(row.Of.Number, []),
    };

    private string Begin(int sheet, string stock, int places)
    {
        if (sheet != begun.Count + 1 || stock.Length is 0 or > Core.Jars.EventBounds.LongestName)
        {
            return "every new sheet gets the next number, and names its stock.";
        }

        begun.Add(sheet, places);
        return "";
    }

    private string Of(int sheet, IReadOnlyList<double> places) =>
        !begun.TryGetValue(sheet, out var last) ? "the sheet was never begun."
        : places.Count > last || places.Any(place => place > last || place != Math.Floor(place)) ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"it has the places 1 to {last}.")
        : "";
}
