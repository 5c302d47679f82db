namespace JarLabel.Operations.Cans;

/// <summary>The shop's own cans of alcohol, as their data sheets state them: rows of the shop's <c>catalog/solvents.json</c>.</summary>
public static class CanBook
{
    private const string FileName = "solvents.json";

    /// <summary>Puts a can into the shop's catalog, or tells everything that hinders it; nothing is half-written.</summary>
    public static Result<CanOutcome> Add(Workbench bench, CanRequest can)
    {
        return Id(can).Then(id => Keep(bench, id, can)).Then<CanOutcome>(catalog => Outcome(bench, catalog, catalog.Solvents.Find(Id(can).Require())!));
    }

    /// <summary>The shop's own cans, in the order of its file.</summary>
    public static Result<IReadOnlyList<CanOutcome>> All(Workbench bench) =>
        Result<IReadOnlyList<CanOutcome>>.Of([.. bench.Catalog.Solvents.Own.Select(can => Outcome(bench, bench.Catalog, can))]);

    /// <summary>Reads the file as it is now, adds the row, and writes it only when the whole catalog then reads without a fault. Whoever changes a shop's
    /// files one at a time begins here.</summary>
    private static Result<ShopCatalog> Keep(Workbench bench, string id, CanRequest can) =>
        bench.DryRun ? Added(bench, id, can) : ShopLock.Within(bench.Folder, () => Added(bench, id, can));

    private static Result<ShopCatalog> Added(Workbench bench, string id, CanRequest can) => ShopFiles.In(bench.Folder.Catalog).Then(files =>
    {
        (string File, ReadOnlyMemory<byte> Bytes) own = files.Any(f => Path.GetFileName(f.File) == FileName)
            ? files.First(f => Path.GetFileName(f.File) == FileName)
            : (Path.Combine(bench.Folder.Catalog, FileName), default);
        return ShopCatalog.Load(files).Then(before =>
        {
            if (before.Solvents.Find(id) is { } there)
            {
                return IsSame(there, can) ? before : CanProblems.Taken(id, there.Name, can.Id is null ? can.Name : null);
            }

            var written = CanFile.With(own.Bytes.Span, CanFile.Row(id, can, bench.Now));
            return ShopCatalog.Load([.. files.Where(f => f.File != own.File), (own.File, written)])
                .Then(after => bench.DryRun ? after : Write(bench, own.File, written).Then<ShopCatalog>(_ => after));
        });
    });

    /// <summary>A form that was sent twice asks for the same can again.</summary>
    private static bool IsSame(Solvent there, CanRequest can) =>
        there.Name == can.Name && there.Stated is [var stated] && stated.Measure == can.Contents.Measure && stated.Parts.SequenceEqual(can.Contents.Parts);

    private static Result<string> Write(Workbench bench, string file, byte[] bytes) => bench.Folder.Create().Then<string>(_ =>
    {
        try
        {
            DurableFile.Replace(file, bytes);
            return file;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return CanProblems.NotWritten(file, fault.Message);
        }
    });

    private static CanOutcome Outcome(Workbench bench, ShopCatalog catalog, Solvent can)
    {
        var hazards = MixtureClassifier.Classify(JarComposition.Possible([(can, Mass.FromKilograms(1))], Mass.Zero, catalog), bench.Rules, catalog).PouredFrom([can]);
        return new(can, hazards, Path.Combine(bench.Folder.Catalog, FileName), BatchCautions.OfSolvent(can));
    }

    private static Result<string> Id(CanRequest can)
    {
        var word = new StringBuilder();
        foreach (var letter in (can.Id ?? can.Name).Trim().ToLowerInvariant())
        {
            if (char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter))
            {
                word.Append(letter);
            }
            else if (word.Length > 0 && word[^1] != '-')
            {
                word.Append('-');
            }
        }

        var id = word.ToString().Trim('-');
        return id.Length > 0 && (can.Id is null || can.Id == id) ? id : can.Id is null ? CanProblems.NoName(can.Name) : CanProblems.NoId(can.Id);
    }
}

/// <summary>A can of the shop's own, with what follows from its data sheet.</summary>
/// <param name="Solvent">The alcohol as the catalog has it from now on.</param>
/// <param name="Hazards">What it is, at its worst where the sheet gives ranges.</param>
/// <param name="File">Where the shop keeps it.</param>
/// <param name="Cautions">What should be known of it.</param>
public sealed record CanOutcome(Solvent Solvent, HazardAssessment Hazards, string File, IReadOnlyList<Problem> Cautions);

/// <summary>What can go wrong with a can of the shop's own.</summary>
internal static class CanProblems
{
    internal static Problem NoName(string read) => new(
        "JL223", Message.Of($"Read {Quoted.Of(read)}, of which no word for commands can be made. Give it a name with letters a to z or digits in it, such as \"the green can\", or say that word, such as {new InputName("id", "green-can")}."), "name");

    internal static Problem NoId(string read) => new(
        "JL223", Message.Of($"Read {Quoted.Of(read)}, of which no word for commands can be made; wanted are letters a to z, digits and hyphens, such as {new InputName("id", "green-can")}."), "id");

    /// <param name="id">The word that is taken.</param>
    /// <param name="name">What bears it.</param>
    /// <param name="read">The name of which the word was made; null where the word itself was said.</param>
    internal static Problem Taken(string id, string name, string? read) => new(
        "JL224",
        Message.Of($"There is an alcohol \"{id}\" already ({name}). What is in it stays as it was said, because jars may have been mixed from it; give this can another name, such as {(read is null ? Message.Of($"{new InputName("id", $"{id}-2")}") : Quoted.Of($"{read} 2"))}."),
        read is null ? "id" : "name");

    internal static Problem NotWritten(string file, string why) => new(
        "JL225", $"The can could not be written into the shop's catalog, which stays as it was: {why}", file);
}

/// <summary>A can of alcohol whose data sheet is at hand.</summary>
/// <param name="Name">What it is called at this bench: <c>the green can</c>.</param>
/// <param name="Contents">What section 3 of the sheet says is in it.</param>
/// <param name="Id">The word for it in commands; null to make one of the name.</param>
public sealed record CanRequest(string Name, StatedContents Contents, string? Id = null);
