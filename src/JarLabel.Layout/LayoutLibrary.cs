namespace JarLabel.Layout;

/// <summary>All sheets and designs: ours, with a shop's own laid over them. Only what is asked for is read.</summary>
public sealed class LayoutLibrary
{
    private readonly SortedDictionary<string, LayoutFile> sheets = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, LayoutFile> designs = new(StringComparer.Ordinal);

    /// <summary>Lays a shop's files over ours; one with the id of ours takes its place.</summary>
    public LayoutLibrary(params IEnumerable<LayoutFile> shopFiles)
    {
        foreach (var file in OwnFiles().Concat(shopFiles))
            (file.IsSheet ? sheets : designs)[file.Id] = file;
    }

    /// <summary>The ids of all sheets, in order.</summary>
    public IReadOnlyCollection<string> SheetIds => sheets.Keys;

    /// <summary>The ids of all designs, in order.</summary>
    public IReadOnlyCollection<string> DesignIds => designs.Keys;

    /// <summary>One sheet.</summary>
    public Result<Sheet> Sheet(string id) => Sheet(id, "sheet");

    /// <summary>One sheet.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="where">Where it was named.</param>
    public Result<Sheet> Sheet(string id, string where) => sheets.TryGetValue(id, out var file)
        ? SheetReader.Read(file.Path, file.Read())
        : LayoutProblems.UnknownSheet(id, SheetIds, where);

    /// <summary>One design.</summary>
    public Result<Design> Design(string id) => Design(id, "design");

    /// <summary>One design.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="where">Where it was named.</param>
    public Result<Design> Design(string id, string where) => designs.TryGetValue(id, out var file)
        ? DesignReader.Read(file.Path, file.Read())
        : LayoutProblems.UnknownDesign(id, DesignIds, where);

    /// <summary>Reads every file; all problems at once, also sheets whose own design does not suit them.</summary>
    public IReadOnlyList<Problem> Check() =>
    [
        .. designs.Keys.SelectMany(id => Design(id).Problems),
        .. sheets.Keys.SelectMany(id => Sheet(id).Then(Suited).Problems),
    ];

    internal static byte[] OwnBytes(string name) => EmbeddedFile.Read(typeof(LayoutLibrary).Assembly, name);

    private static IEnumerable<LayoutFile> OwnFiles() =>
        typeof(LayoutLibrary).Assembly.GetManifestResourceNames()
            .Where(name => name.Contains('/', StringComparison.Ordinal))
            .Select(name => new LayoutFile(name, () => OwnBytes(name)));

    private Result<Sheet> Suited(Sheet sheet) => Design(sheet.Design).Then<Sheet>(design =>
        design.Suits(sheet.AreaAt(1)) ? sheet : LayoutProblems.DesignDoesNotSuit(design, sheet.AreaAt(1)));
}
