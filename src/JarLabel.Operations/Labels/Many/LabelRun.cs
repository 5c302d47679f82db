namespace JarLabel.Operations.Labels.Many;

/// <summary>One long print: takes the places, draws page by page into the file, then records what was printed. However many labels there
/// are, one page's are held at a time.</summary>
internal sealed class LabelRun(Workbench bench, LedgerStep step, LabelComposer composer, LabelStock stock, int? start, Action<int, int>? progress)
{
    private readonly List<LabelledJar> labelled = [];
    private readonly List<Problem> unread = [];
    private readonly PageFiller filler = composer.Filler(stock);
    private readonly LabelCautions cautions = new();
    private int pages;

    internal Result<WrittenLabels> Write(JarPick pick, string? file)
    {
        var count = (int)pick.Labels;
        var path = file ?? UsualPath();
        return ShopLives.Of(bench, step).Then(lives => SheetsInUse.TakeNext(bench, step, stock.Sheet, count, start).Then(places =>
            Draw(path, filler.Fill(Labels(pick.Jars, places, new JarDating(bench, step, lives)))).Then(drawn => Record(drawn).Then<WrittenLabels>(_ => new WrittenLabels(
                path, stock.Design.Id, stock.Sheet.Id, pick.Jars.Count, count, pages, places[0], places[^1], pick.LeftOut, filler.WithMoved)
            {
                Redated = [.. labelled.Where(jar => jar.Redated is not null).Select(jar => jar.Jar)],
                ForFlakes = [.. labelled.Where(jar => jar.Redated is { Setting: not null }).Select(jar => jar.Jar)],
                Cautions = [.. pick.Cautions, .. cautions.All],
            }))));
    }

    private string Moment => bench.Now.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);

    // Two prints within one second do not take each other's place.
    private string UsualPath() => Enumerable.Range(1, int.MaxValue)
        .Select(n => Path.Combine(bench.Folder.Labels, string.Create(CultureInfo.InvariantCulture, $"labels-{bench.Now:yyyy-MM-dd-HHmmss}{(n > 1 ? $"-{n}" : "")}-{stock.Design.Id}.pdf")))
        .First(path => !File.Exists(path));

    /// <summary>The labels in order, each jar read when its turn comes and dated by the shop's tests as it would be alone.</summary>
    private IEnumerable<Placement> Labels(IReadOnlyList<JarCopies> jars, IReadOnlyList<SheetPlace> places, JarDating dating)
    {
        var at = 0;
        foreach (var (number, copies) in jars)
        {
            if (!Dated(JarNumber.From(number), dating).TryGet(out var read, out var problems))
            {
                unread.AddRange(problems);
                continue;
            }

            var text = JarWords.Of(bench, read.History, JarWords.Hazards(bench, read.History.Jar));
            cautions.Look(read.History);
            labelled.Add(new LabelledJar(number, read.History.Jar.Revision, text.Code ?? "", read.Redated, places[at], copies));
            for (var copy = 0; copy < copies; copy++, at++)
            {
                yield return new Placement(text, places[at].Sheet, places[at].Place, $"jar {read.History.Jar.Number}");
                progress?.Invoke(at + 1, places.Count);
            }
        }
    }

    /// <summary>The jar with the dates that the tests say now. They are recorded with its label, after all labels were drawn.</summary>
    private Result<(JarHistory History, Redated? Redated)> Dated(JarNumber number, JarDating dating) =>
        JarHistory.Of(number, step.EventsOf(Subject.Jar(number.Value))).Then(history =>
        {
            var known = LearnedDates.Mark(dating, history);
            var redated = known.Learned is { } now ? Redated.Known(bench.Now, known, now) : null;
            return (redated is null ? history : history.With(redated)).Then<(JarHistory, Redated?)>(dated => (dated.Knowing(known.Doubts), redated));
        });

    /// <summary>Draws the pages into the file; on a dry run they are made and dropped.</summary>
    private Result<DrawnFile> Draw(string path, IEnumerable<Page> made)
    {
        using var turning = made.GetEnumerator();
        if (!turning.MoveNext())
        {
            return Checked(new DrawnFile(path));
        }

        return Path.GetExtension(path).Equals(".pdf", StringComparison.OrdinalIgnoreCase) ? DrawPdf(path, Rest(turning)) : DrawPicture(path, [.. Rest(turning)]);
    }

    private Result<DrawnFile> DrawPdf(string path, IEnumerable<Page> turned)
    {
        if (bench.DryRun)
        {
            foreach (var _ in turned)
            {
                // Only to see that every label can be made.
            }

            step.Rehearse(path, OwnKind.Pdf, bench.Force);
            return Checked(new DrawnFile(path));
        }

        return Checked(Of(step.Stage(path, OwnKind.Pdf, stream => PdfRenderer.Write(stream, turned, new PdfFacts("Labels", bench.OnClock)), bench.Force)));
    }

    // A picture holds one page; a name that is no picture's is told too.
    private Result<DrawnFile> DrawPicture(string path, IReadOnlyList<Page> all) =>
        Checked(new DrawnFile(path)).Then(drawn => LabelFiles.Bytes(path, all, "Labels", bench.Now).Then<DrawnFile>(bytes =>
            step.Write(bench, path, bytes) is { } staged ? Of(staged) : drawn));

    private static DrawnFile Of(StagedFile staged) => new(staged.Path, staged.Sha256);

    private Result<DrawnFile> Checked(DrawnFile file) =>
        (Problem[])[.. unread, .. filler.Problems] is { Length: > 0 } found ? Result<DrawnFile>.Failed(found) : file;

    private IEnumerable<Page> Rest(IEnumerator<Page> turning)
    {
        do
        {
            pages++;
            yield return turning.Current;
        }
        while (turning.MoveNext());
    }

    private Result<int> Record(DrawnFile file)
    {
        foreach (var (jar, revision, payload, redated, first, copies) in labelled)
        {
            if (redated is not null)
            {
                step.Append(Subject.Jar(jar), Moment, nameof(Redated), revision, JarEventJson.Write(redated));
            }

            var written = new Labelled(bench.Now, revision, file.Path, stock.Design.Id, stock.Sheet.Id, first.Place, payload)
            {
                Sha256 = file.Sha256,
                Copies = copies > 1 ? copies : null,
            };
            step.Append(Subject.Jar(jar), Moment, nameof(Labelled), revision, JarEventJson.Write(written));
        }

        return labelled.Count;
    }

    private readonly record struct DrawnFile(string Path, string? Sha256 = null);
}

/// <summary>What the ledger has to keep of one jar's labels of a long print.</summary>
/// <param name="Jar">The jar's number.</param>
/// <param name="Revision">The revision the labels speak of.</param>
/// <param name="Payload">What their code says.</param>
/// <param name="Redated">The dates it gets with this label; null where those on record still hold.</param>
/// <param name="First">Where the first of them stands.</param>
/// <param name="Copies">How many there are.</param>
internal readonly record struct LabelledJar(int Jar, int Revision, string Payload, Redated? Redated, SheetPlace First, int Copies);

/// <summary>Many labels as written into one file.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The stock's id.</param>
/// <param name="Jars">How many jars they are for.</param>
/// <param name="Labels">How many labels.</param>
/// <param name="Pages">On how many pages.</param>
/// <param name="First">Where the first one stands.</param>
/// <param name="Last">Where the last one stands.</param>
/// <param name="LeftOut">Jars of a run that are no longer on a shelf.</param>
/// <param name="WithMoved">Labels that had no room for everything; the rest stands on the jar card.</param>
public sealed record WrittenLabels(
    string File, string Design, string Sheet, int Jars, int Labels, int Pages, SheetPlace First, SheetPlace Last, IReadOnlyList<int> LeftOut, int WithMoved)
{
    /// <summary>Jars that got other dates, by the shop's drying tests or by what was found of their flakes.</summary>
    public IReadOnlyList<int> Redated { get; init; } = [];

    /// <summary>Those of them that got them by what was found of their flakes.</summary>
    public IReadOnlyList<int> ForFlakes { get; init; } = [];

    /// <summary>What should be known of them as they are printed.</summary>
    public IReadOnlyList<Problem> Cautions { get; init; } = [];
}
