namespace JarLabel.Store;

/// <summary>What was kept for good during one run or one request, noted the moment it was: whoever has to tell of a fault afterwards says
/// from this, and from nothing else, what was recorded.</summary>
public sealed class KeptWork
{
    private static readonly AsyncLocal<KeptWork?> Current = new();
    private readonly Lock gate = new();
    private readonly List<string> kept = [];
    private readonly KeptWork? whole;
    private bool unsure;

    private KeptWork(KeptWork? whole) => this.whole = whole;

    /// <summary>Begins to note what this run or request keeps.</summary>
    public static KeptWork Watch() => Current.Value = new KeptWork(null);

    /// <summary>Begins to note what a part of it keeps; the whole goes on noting too.</summary>
    public static KeptWork WatchPart() => Current.Value = new KeptWork(Current.Value);

    /// <summary>One sentence that says what was recorded, as far as is known.</summary>
    public string Words
    {
        get
        {
            lock (gate)
            {
                var told = kept.Count == 0 ? "Nothing was recorded." : $"This is recorded all the same: {string.Join(", ", kept.Distinct())}.";
                return unsure ? $"{(kept.Count == 0 ? "" : told + " ")}Whether the last step was recorded is not known: the shelf and the history of the jar show it." : told;
            }
        }
    }

    /// <summary>True when anything was kept, or may have been.</summary>
    public bool Any
    {
        get
        {
            lock (gate)
            {
                return kept.Count > 0 || unsure;
            }
        }
    }

    /// <summary>Notes that something is on the disk for good.</summary>
    internal static void Add(params IEnumerable<string> what)
    {
        string[] words = [.. what];
        for (var watching = Current.Value; watching is not null; watching = watching.whole)
        {
            lock (watching.gate)
            {
                watching.kept.AddRange(words);
                watching.unsure = false;
            }
        }
    }

    /// <summary>Notes that the disk has been told to keep a step; <see cref="Add"/> or <see cref="Dropped"/> follows, unless the disk fails.</summary>
    internal static void Begin() => Set(unsure: true);

    /// <summary>Notes that what was begun is surely not kept.</summary>
    internal static void Dropped() => Set(unsure: false);

    private static void Set(bool unsure)
    {
        for (var watching = Current.Value; watching is not null; watching = watching.whole)
        {
            lock (watching.gate)
            {
                watching.unsure = unsure;
            }
        }
    }
}
