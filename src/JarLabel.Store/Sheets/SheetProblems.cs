namespace JarLabel.Store.Sheets;

/// <summary>What can be wrong with a wish for places on a sheet.</summary>
internal static class SheetProblems
{
    internal static Problem NoSuchSheet(int sheet) =>
        new("JL430", Message.Of($"There is no sheet {sheet}; {new Remedy("sheet state")} lists those in use."));

    internal static Problem NoSuchPlace(SheetInUse sheet, int place) =>
        new("JL431", string.Create(CultureInfo.InvariantCulture, $"Read place {place}; a sheet of {sheet.Stock} has places 1 to {sheet.Places}."), "start");

    internal static Problem AlreadyTaken(SheetInUse sheet, int place) =>
        new("JL432", Message.Of(
            $"Place {place} of the open sheet is used. Free are: {Listed(sheet.Free)}. For a fresh sheet: {new Remedy("sheet new", new InputName("id", sheet.Stock))}."), "start");

    internal static Problem NotTaken(SheetInUse sheet, IEnumerable<int> places) =>
        new("JL433", string.Create(CultureInfo.InvariantCulture,
            $"On sheet {sheet.Number} these places are not used, so they cannot be taken back: {Listed(places)}. Used are: {Listed(sheet.Taken)}."));

    internal static Problem NotASheet(int sheet) =>
        new("JL434", string.Create(CultureInfo.InvariantCulture, $"The events of sheet {sheet} do not make a sheet of labels."));

    private static string Listed(IEnumerable<int> places) =>
        string.Join(", ", places.Select(place => place.ToString(CultureInfo.InvariantCulture)));
}
