namespace JarLabel.Core.Catalog;

/// <summary>The rows of one catalog file: ours, with the shop's own laid over them.</summary>
public sealed class CatalogTable<T>
    where T : CatalogRow
{
    private readonly Dictionary<string, T> byWord;

    private CatalogTable(string kind, IReadOnlyList<T> rows, IReadOnlyList<T> own, Dictionary<string, T> byWord)
    {
        Kind = kind;
        Rows = rows;
        Own = own;
        this.byWord = byWord;
    }

    /// <summary>What one row is called in a message: <c>grade</c>.</summary>
    public string Kind { get; }

    /// <summary>Every row, ours first.</summary>
    public IReadOnlyList<T> Rows { get; }

    /// <summary>Those of the shop's own file, in its order.</summary>
    public IReadOnlyList<T> Own { get; }

    /// <summary>Every id, in the order of the rows.</summary>
    public IReadOnlyList<string> Ids => [.. Rows.Select(r => r.Id)];

    /// <summary>The row with this id or alias, in capitals or not; null when there is none.</summary>
    public T? Find(string word) => byWord.GetValueOrDefault(word);

    /// <summary>The row that was typed, also in other order or with spaces (<c>garnet dewaxed</c>), or a problem that names what was probably
    /// meant and all that are allowed.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="where">Where it was typed: <c>--grade</c>.</param>
    public Result<T> Named(string typed, string? where = null)
    {
        return (Find(typed.Trim()) ?? MeantWords.Same(byWord, typed)) is { } row ? row : CatalogProblems.UnknownWord(Kind, typed, where, MeantWords.Candidates(byWord, typed), Ids);
    }

    /// <summary>A row that must be there, because the catalog was checked.</summary>
    internal T Require(string id) => Find(id) ?? throw new KeyNotFoundException($"No {Kind} has the id {id}.");

    /// <summary>Turns each row into another kind of row with the same id.</summary>
    internal CatalogTable<TOther> Map<TOther>(Func<T, TOther> turn)
        where TOther : CatalogRow
    {
        var turned = Rows.ToDictionary(r => r.Id, turn, StringComparer.Ordinal);
        return new(
            Kind,
            [.. Rows.Select(r => turned[r.Id])],
            [.. Own.Select(r => turned[r.Id])],
            byWord.ToDictionary(w => w.Key, w => turned[w.Value.Id], StringComparer.OrdinalIgnoreCase));
    }

    /// <summary>Reads our rows and lays the shop's over them; a row with the same id takes the place of ours.</summary>
    internal static Result<CatalogTable<T>> Read(string kind, CatalogFile ours, CatalogFile? shop, Func<FieldReader, T> read) =>
        ReadRows(ours, read).Then(rows => shop is null
            ? Index(kind, ours.Path, rows, [])
            : ReadRows(shop, read).Then(theirs => Index(kind, shop.Path, Overlay(rows, theirs), theirs)));

    private static Result<IReadOnlyList<T>> ReadRows(CatalogFile file, Func<FieldReader, T> read) =>
        StrictJson.ReadList(file.Path, CatalogProblems.Form, file.Bytes, read);

    /// <summary>A shop's row stands in the place of ours, because the order of some tables means something; new ones stand last.</summary>
    private static List<T> Overlay(IReadOnlyList<T> ours, IReadOnlyList<T> theirs)
    {
        var byId = theirs.DistinctBy(r => r.Id, StringComparer.OrdinalIgnoreCase).ToDictionary(r => r.Id, StringComparer.OrdinalIgnoreCase);
        var known = ours.Select(r => r.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. ours.Select(r => byId.GetValueOrDefault(r.Id, r)), .. theirs.Where(r => !known.Contains(r.Id))];
    }

    /// <summary>Finds rows by word. A word of the shop's rows outranks the same word of ours; twice among the shop's, or twice among
    /// ours, it is a fault.</summary>
    private static Result<CatalogTable<T>> Index(string kind, string file, IReadOnlyList<T> rows, IReadOnlyList<T> shop)
    {
        var byWord = new Dictionary<string, T>(StringComparer.OrdinalIgnoreCase);
        var doubled = Enter(byWord, shop);
        var taken = shop.Count == 0 ? [] : byWord.Keys.ToHashSet(StringComparer.OrdinalIgnoreCase);
        doubled.AddRange(Enter(byWord, shop.Count == 0 ? rows : rows.Except(shop)).Where(word => !taken.Contains(word)));
        return doubled.Count == 0
            ? new CatalogTable<T>(kind, rows, shop, byWord)
            : Result<CatalogTable<T>>.Failed([.. doubled.Select(word => CatalogProblems.DoubledId(file, word))]);
    }

    /// <summary>Enters every id and alias; returns the words that were there already.</summary>
    private static List<string> Enter(Dictionary<string, T> byWord, IEnumerable<T> rows)
    {
        var there = new List<string>();
        foreach (var row in rows)
        {
            EnterOne(row.Id, row);
            foreach (var alias in row.Aliases)
            {
                EnterOne(alias, row);
            }
        }

        return there;

        void EnterOne(string word, T row)
        {
            if (!byWord.TryAdd(word, row))
            {
                there.Add(word);
            }
        }
    }
}
