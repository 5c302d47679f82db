namespace JarLabel.Store.Sheets;

/// <summary>How the events of a sheet are written, and the sheet they add up to.</summary>
internal static class SheetEvents
{
    internal const string Begun = "Begun";
    internal const string Taken = "Taken";
    internal const string TakenBack = "TakenBack";
    internal const string PutAway = "PutAway";
    internal const string Nothing = "{}";

    internal static string BegunBody(string stock, int places) => JsonLine.Of(json =>
    {
        json.WriteString("stock", stock);
        json.WriteNumber("places", places);
    });

    internal static string PlacesBody(IEnumerable<int> places) => JsonLine.Of(json =>
    {
        json.WriteStartArray("places");
        foreach (var place in places)
        {
            json.WriteNumberValue(place);
        }

        json.WriteEndArray();
    });

    /// <summary>The sheet that its events, in order, add up to.</summary>
    internal static SheetInUse Fold(IReadOnlyList<EventRow> events)
    {
        using var begun = JsonDocument.Parse(events[0].Body);
        var taken = new SortedSet<int>();
        foreach (var row in events)
        {
            Apply(row, taken);
        }

        return new SheetInUse(
            events[0].Of.Number,
            begun.RootElement.GetProperty("stock").GetString()!,
            begun.RootElement.GetProperty("places").GetInt32(),
            taken,
            events[^1].Kind != PutAway);
    }

    private static void Apply(EventRow row, SortedSet<int> taken)
    {
        if (row.Kind is not (Taken or TakenBack))
        {
            return;
        }

        using var body = JsonDocument.Parse(row.Body);
        var places = body.RootElement.GetProperty("places").EnumerateArray().Select(p => p.GetInt32());
        if (row.Kind == Taken)
        {
            taken.UnionWith(places);
        }
        else
        {
            taken.ExceptWith(places);
        }
    }
}
