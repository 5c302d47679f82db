namespace JarLabel.Operations;

/// <summary>A shop with its settings, catalog and layouts at hand, at one moment. Everything that a person does starts here, whether it is
/// typed or tapped.</summary>
public sealed class Workbench
{
    private readonly WorkbenchOptions request;

    private Workbench(ShopFolder folder, ShopSettings settings, ShopCatalog catalog, WorkbenchOptions request)
    {
        this.request = request;
        Folder = folder;
        Settings = settings;
        Catalog = catalog;
        Now = request.Now;
        DryRun = request.DryRun;
        StepsSeen = request.StepsSeen;
        EventsSeen = request.EventsSeen;
        Dated = request.Dated;
        Rules = request.Rules ?? settings.Rules;
        Metric = request.Metric ?? settings.Metric;
        Keeping = new KeepingSettings(settings.AgingPerTenKelvin);
    }

    /// <summary>The shop's folder.</summary>
    public ShopFolder Folder { get; }

    /// <summary>The shop's settings.</summary>
    public ShopSettings Settings { get; }

    /// <summary>Solvents, grades and what is known of them, the shop's own included.</summary>
    public ShopCatalog Catalog { get; }

    /// <summary>The moment that counts as now.</summary>
    public DateTime Now { get; private set; }

    /// <summary>The same moment as the zone of this machine's clock has it.</summary>
    internal DateTimeOffset OnClock => new(DateTime.SpecifyKind(Now, DateTimeKind.Local));

    /// <summary>True when somebody said the moment; false when it is the clock's.</summary>
    public bool Dated { get; }

    /// <summary>That the moment lies so far ahead of the clock that it must be a slip; null otherwise.</summary>
    internal Problem? FarAhead => Dated && request.Clock is { } clock && Now > Slip(clock) ? OperationProblems.FarAhead(Now, clock) : null;

    /// <summary>That the moment lies so far before the clock that it must be a slip; null otherwise.</summary>
    internal Problem? FarBehind => Dated && request.Clock is { } clock && Now < clock.AddYears(-YearsOnRecord) ? OperationProblems.FarBehind(Now, clock) : null;

    /// <summary>That the moment must be a slip, one way or the other.</summary>
    internal IEnumerable<Problem> Slips => ((Problem?[])[FarAhead, FarBehind]).OfType<Problem>();

    /// <summary>Nobody enters a jar, a bag or a bottle that stood there longer ago.</summary>
    private const int YearsOnRecord = 10;

    /// <summary>From when on a moment must be a slip: what is entered is of the past, and seldom of what is planned.</summary>
    internal static DateTime Slip(DateTime now) => now.AddYears(1);

    /// <summary>True for a step that lies so far ahead of the clock that one of the two is wrong, and most often the day that was said.</summary>
    internal static bool IsAhead(DateTime step, DateTime clock) => step > clock.AddDays(1);

    /// <summary>That the clock goes wrong, where it does by what is on record; null otherwise.</summary>
    internal Problem? ClockBehind { get; private set; }

    /// <summary>The labelling rules that apply.</summary>
    public RuleSet Rules { get; }

    /// <summary>True when metric amounts come first.</summary>
    public bool Metric { get; }

    /// <summary>True when nothing may be recorded or written.</summary>
    public bool DryRun { get; }

    /// <summary>True when somebody else's file may be written over.</summary>
    public bool Force => request.Force;

    /// <summary>The address by which somebody came who is not at the machine itself; null for anybody else.</summary>
    internal string? Came => request.Came;

    /// <summary>Makes something that is told how many of how many are done.</summary>
    internal Func<string, Action<int, int>> Progress => request.Progress;

    /// <summary>How many steps of its jar the person has seen; null where that does not matter.</summary>
    public int? StepsSeen { get; }

    /// <summary>How many events of the whole ledger the person has seen; null where that does not matter.</summary>
    public long? EventsSeen { get; }

    /// <summary>What the last recorded step wrote, and which places of label stock it took; null before there was one.</summary>
    public StepTrace? LastStep { get; internal set; }

    /// <summary>Files of recorded steps that could not be put in their places yet.</summary>
    public IReadOnlyList<Problem> Unmoved { get; internal set; } = [];

    /// <summary>The same of what was recorded before this bench was opened.</summary>
    public IReadOnlyList<Problem> Waiting { get; internal set; } = [];

    /// <summary>How time and warmth act.</summary>
    public KeepingSettings Keeping { get; }

    /// <summary>The same with other settings.</summary>
    public Workbench With(ShopSettings settings) => new Workbench(Folder, settings, Catalog, request);

    /// <summary>Holds the moment against the step that the next one builds on: a moment that somebody said before it is refused; a clock that has been
    /// set back loses nobody's work, and what is recorded bears the moment of that step.</summary>
    /// <param name="last">When that step was.</param>
    /// <param name="early">What to say of a moment before it.</param>
    /// <param name="behind">What to say of such a clock; null for nothing.</param>
    internal Result<DateTime> NotBefore(DateTime last, Func<Problem> early, Func<Problem?> behind)
    {
        if (Now < last && Dated)
        {
            return early();
        }

        if (Now < last)
        {
            ClockBehind ??= behind();
            Now = last;
        }

        return Now;
    }

    /// <summary>Finds the shop and reads its settings and catalog; nothing is made and nothing is changed.</summary>
    public static Result<Workbench> Open(WorkbenchOptions request, Func<string, string?> environment)
    {
        return ShopFolder.Find(request.Shop, environment).Then(folder => request.FilesUnread
            ? new Workbench(folder, new ShopSettings(), ShopCatalog.Ours, request)
            : ShopSettingsFile.Read(folder).Then(settings =>
                ShopFiles.In(folder.Catalog).Then(ShopCatalog.Load).Then<Workbench>(catalog =>
                    new Workbench(folder, settings, catalog, request))));
    }
}
