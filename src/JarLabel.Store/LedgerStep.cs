namespace JarLabel.Store;

/// <summary>One step that is recorded whole or not at all: looks up what is so now, takes numbers, adds events and writes files.</summary>
public sealed class LedgerStep : LedgerView
{
    private static readonly string[] Moments = ["yyyy-MM-ddTHH:mm:ss", "yyyy-MM-ddTHH:mm"];
    private readonly EventTable events;
    private readonly SheetBook sheets;
    private readonly Staging staging;
    private readonly Dictionary<SubjectKind, int> given = [];
    private readonly HashSet<int> touched = [];
    private readonly List<string> files = [];
    private readonly List<Problem> cautions = [];
    private readonly GivenNumbers numbers;

    internal LedgerStep(EventTable events, JarIndex jars, SheetBook sheets, Staging staging, GivenNumbers numbers)
        : base(events, jars, sheets)
    {
        this.numbers = numbers;
        this.events = events;
        this.sheets = sheets;
        this.staging = staging;
    }

    /// <summary>The jars that got an event in this step.</summary>
    internal IReadOnlyCollection<int> TouchedJars => touched;

    /// <summary>The numbers that this step gave out: the highest of each kind.</summary>
    internal IReadOnlyDictionary<SubjectKind, int> Given => given;

    /// <summary>What the step found about the ledger that should be known, though it went through.</summary>
    public IReadOnlyList<Problem> Cautions => cautions;

    /// <summary>Takes the next number of a kind: above all in the ledger, and above all that were ever given out in this shop. It is used once
    /// an event of it is added in this step.</summary>
    public int NextNumber(SubjectKind kind)
    {
        if (!given.TryGetValue(kind, out var last))
        {
            var (here, ever) = (LastNumber(kind), numbers.Last(kind));
            last = Math.Max(here, ever);
            if (ever > here)
            {
                cautions.Add(StoreProblems.NumbersMissing(kind, here + 1, ever));
            }
        }

        return given[kind] = last + 1;
    }

    /// <summary>Adds an event at the end of the ledger. What happens to a sheet is added through <see cref="Sheets"/>.</summary>
    /// <param name="of">What it happened to.</param>
    /// <param name="at">The moment, as <see cref="EventRow.At"/>.</param>
    /// <param name="kind">The event's name.</param>
    /// <param name="revision">The subject's revision after it.</param>
    /// <param name="body">One JSON object on one line.</param>
    public EventRow Append(Subject of, string at, string kind, int revision, string body)
    {
        Guard(of, at, kind, revision, body);
        if (of.Kind == SubjectKind.Jar)
        {
            touched.Add(of.Number);
        }

        return events.Append(of, at, kind, revision, body);
    }

    /// <summary>Writes a file that comes into its place when the step is recorded. When it cannot be written, or the guard of written
    /// files refuses its place, the whole step is dropped.</summary>
    /// <param name="path">The full path, or one relative to the shop folder.</param>
    /// <param name="bytes">Its contents.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    public StagedFile Stage(string path, byte[] bytes, bool force = false) => Stage(path, OwnMark.Of(bytes), stream => stream.Write(bytes), force);

    /// <summary>The same for a file that is too long to hold: its bytes are written as they come.</summary>
    /// <param name="path">The full path, or one relative to the shop folder.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="write">Writes its contents; may throw what a full disk throws.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    public StagedFile Stage(string path, OwnKind kind, Action<Stream> write, bool force = false)
    {
        var label = GivenNumbers.OfLabel(path);
        var staged = staging.Stage(path, kind, force, write, isNew: label is { } of && given.GetValueOrDefault(of.Kind) >= of.Number);
        files.Add(path);
        return staged;
    }

    /// <summary>For a step that is only worked out: drops it when the file could not be staged, and writes nothing.</summary>
    /// <param name="path">The full path, or one relative to the shop folder.</param>
    /// <param name="kind">What it would be.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    public void Rehearse(string path, OwnKind kind, bool force = false) => staging.Look(path, kind, force);

    /// <summary>The same for contents that are at hand.</summary>
    /// <param name="path">The full path, or one relative to the shop folder.</param>
    /// <param name="bytes">What its contents would be.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    public void Rehearse(string path, byte[] bytes, bool force = false) => Rehearse(path, OwnMark.Of(bytes), force);

    /// <summary>The files that this step wrote, in order, as they were named.</summary>
    public IReadOnlyList<string> Files => files;

    /// <summary>The sheets of label stock, to take places on them.</summary>
    public SheetBook Sheets => sheets;

    private static void Guard(Subject of, string at, string kind, int revision, string body)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(of.Number);
        ArgumentOutOfRangeException.ThrowIfEqual(of.Kind, SubjectKind.Sheet);
        ArgumentOutOfRangeException.ThrowIfNegative(revision);
        ArgumentException.ThrowIfNullOrWhiteSpace(kind);
        if (!IsMoment(at))
        {
            throw new ArgumentException($"Not a local ISO moment: {at}", nameof(at));
        }

        if (!IsObjectOnOneLine(body))
        {
            throw new ArgumentException("Not one JSON object on one line.", nameof(body));
        }
    }

    /// <summary>The rule for <see cref="EventRow.At"/>.</summary>
    internal static bool IsMoment(string at) => DateTime.TryParseExact(at, Moments, CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    /// <summary>The rule for <see cref="EventRow.Body"/>.</summary>
    internal static bool IsObjectOnOneLine(string body)
    {
        try
        {
            using var parsed = JsonDocument.Parse(body);
            return parsed.RootElement.ValueKind == JsonValueKind.Object && !body.AsSpan().ContainsAny('\r', '\n');
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
