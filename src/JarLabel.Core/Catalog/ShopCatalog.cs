namespace JarLabel.Core.Catalog;

/// <summary>Everything the shop knows of substances, solvents, grades, hazard words, keeping and storage: our own rows with the shop's
/// own files laid over them. Our own files are read when they are first asked for; the shop's at once, so that every fault shows.</summary>
public sealed class ShopCatalog
{
    private const string SubstancesFile = "substances.json", SolventsFile = "solvents.json", GradesFile = "grades.json",
        FormsFile = "forms.json", KeepingFile = "keeping.json", ClassesFile = "classes.json", PhrasesFile = "phrases.json",
        StorageFile = "storage.json";

    private readonly CatalogSource<Substance> substances;
    private readonly CatalogSource<SolventRow> solventRows;
    private readonly CatalogSource<Grade> grades;
    private readonly CatalogSource<LacForm> forms;
    private readonly CatalogSource<KeepingClass> keeping;
    private readonly CatalogSource<HazardClass> classes;
    private readonly CatalogSource<Phrase> phrases;
    private readonly CatalogSource<StorageLimit> storage;
    private readonly Lazy<CatalogTable<Solvent>> solvents;

    private ShopCatalog(IReadOnlyList<CatalogFile> theirs)
    {
        substances = new("substance", SubstancesFile, theirs, Substance.Read);
        solventRows = new("solvent", SolventsFile, theirs, SolventRow.Read);
        grades = new("grade", GradesFile, theirs, Grade.Read);
        forms = new("form", FormsFile, theirs, LacForm.Read);
        keeping = new("keeping class", KeepingFile, theirs, KeepingClass.Read);
        classes = new("hazard class", ClassesFile, theirs, HazardClass.Read);
        phrases = new("phrase", PhrasesFile, theirs, Phrase.Read);
        storage = new("storage limit", StorageFile, theirs, StorageLimit.Read);
        solvents = new(() => solventRows.Table.Map(new SolventMaker(Substances, solventRows.Table).Make));
    }

    /// <summary>The catalog as it comes, with nothing of a shop's own.</summary>
    public static ShopCatalog Ours { get; } = new([]);

    /// <summary>The names a catalog file may have.</summary>
    public static IReadOnlyList<string> FileNames { get; } =
        [SubstancesFile, SolventsFile, GradesFile, FormsFile, KeepingFile, ClassesFile, PhrasesFile, StorageFile];

    /// <summary>Chemical substances and the resin.</summary>
    public CatalogTable<Substance> Substances => substances.Table;

    /// <summary>Alcohols as they are bought.</summary>
    public CatalogTable<Solvent> Solvents => solvents.Value;

    /// <summary>Grades of shellac.</summary>
    public CatalogTable<Grade> Grades => grades.Table;

    /// <summary>Forms of dry shellac.</summary>
    public CatalogTable<LacForm> Forms => forms.Table;

    /// <summary>How long each kind keeps.</summary>
    public CatalogTable<KeepingClass> Keeping => keeping.Table;

    /// <summary>Hazard classes and what a label says for each.</summary>
    public CatalogTable<HazardClass> Classes => classes.Table;

    /// <summary>Hazard and precautionary statements, the most important first.</summary>
    public CatalogTable<Phrase> Phrases => phrases.Table;

    /// <summary>Storage limits.</summary>
    public CatalogTable<StorageLimit> Storage => storage.Table;

    /// <summary>The solvent that a record names. One that has gone from the catalog since is taken for the worst that is sold.</summary>
    public Solvent SolventOf(string recorded) => Solvents.Find(recorded) ?? Unlisted.Solvent(recorded);

    /// <summary>The grade that a record names. One that has gone from the catalog since is taken for one that keeps the shortest.</summary>
    public Grade GradeOf(string recorded) => Grades.Find(recorded) ?? Unlisted.Grade(recorded);

    /// <summary>Everything that a can may be which says this of itself, in percent by weight; the first one stands for weights and volumes.</summary>
    public IReadOnlyList<Composition> Possible(StatedContents stated) => new SolventMaker(Substances, solventRows.Table).Possible([stated]);

    /// <summary>Lays a shop's own files over ours and checks everything they say.</summary>
    /// <param name="shopFiles">Each file's name as the user knows it, with or without folders, and its bytes.</param>
    public static Result<ShopCatalog> Load(IEnumerable<(string File, ReadOnlyMemory<byte> Bytes)> shopFiles)
    {
        CatalogFile[] files = [.. shopFiles.Select(f => new CatalogFile(f.File, f.Bytes))];
        if (files.Length == 0)
        {
            return Ours;
        }

        var catalog = new ShopCatalog(files);
        Problem[] faults = [.. FileFaults(files), .. catalog.FormFaults(), .. catalog.ReferenceFaults()];
        return faults.Length == 0 ? catalog : Result<ShopCatalog>.Failed(faults);
    }

    private static IEnumerable<Problem> FileFaults(IReadOnlyList<CatalogFile> files) =>
    [
        .. files.Where(f => !FileNames.Contains(f.Name)).Select(f => CatalogProblems.UnknownFile(f.Path, FileNames)),
        .. files.GroupBy(f => f.Name).SelectMany(g => g.Skip(1)).Select(f => CatalogProblems.SecondFile(f.Path, f.Name)),
    ];

    /// <summary>What does not fit together, as far as the files it is between can be read: one file's fault hides none of another's.</summary>
    private IEnumerable<Problem> ReferenceFaults() =>
    [
        .. substances.IsSound && classes.IsSound ? CatalogCheck.OfSubstances(Substances, Classes) : [],
        .. grades.IsSound && keeping.IsSound ? CatalogCheck.OfKeeping(Grades, Keeping) : [],
        .. grades.IsSound && forms.IsSound ? CatalogCheck.OfForms(Grades, Forms) : [],
        .. classes.IsSound && phrases.IsSound ? CatalogCheck.OfStatements(Classes, Phrases) : [],
        .. classes.IsSound ? CatalogCheck.OfIngredients(Classes) : [],
        .. solventRows.IsSound && substances.IsSound ? CatalogCheck.OfSolvents(solventRows.Table, Substances) : [],
    ];

    private IEnumerable<Problem> FormFaults() =>
    [
        .. substances.Faults, .. solventRows.Faults, .. grades.Faults, .. forms.Faults,
        .. keeping.Faults, .. classes.Faults, .. phrases.Faults, .. storage.Faults,
    ];
}

/// <summary>One catalog file: where its rows come from, read when first asked for.</summary>
internal sealed class CatalogSource<T>
    where T : CatalogRow
{
    private readonly Lazy<Result<CatalogTable<T>>> read;

    internal CatalogSource(string kind, string file, IEnumerable<CatalogFile> theirs, Func<FieldReader, T> readRow)
    {
        var shop = theirs.FirstOrDefault(f => f.Name == file);
        read = new(() => CatalogTable<T>.Read(kind, new(file, EmbeddedFile.Read("catalog/" + file)), shop, readRow));
    }

    internal CatalogTable<T> Table => read.Value.Require();

    internal IReadOnlyList<Problem> Faults => read.Value.Problems;

    internal bool IsSound => read.Value.Ok;
}

/// <summary>The form dry shellac is bought or brought in, and how long it takes to dissolve.</summary>
/// <param name="Id"><c>flake</c>, <c>button</c>, <c>seed</c>, <c>ground</c>.</param>
/// <param name="Name">As printed.</param>
/// <param name="HoursAt20C">Hours until nothing is left undissolved at 20 °C, swirled now and then.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LacForm(string Id, string Name, decimal HoursAt20C, string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>The same as it dissolves in a cut.</summary>
    public LacForm In(PoundCut cut) => this with { HoursAt20C = HoursAt20C * (decimal)Shellac.SlowerIn(cut) };

    internal static LacForm Read(FieldReader fields) =>
        new(fields.Text("id"), fields.Text("name"), fields.Exact("hoursAt20C", 0.01m, 1000), fields.Text("source"));
}
