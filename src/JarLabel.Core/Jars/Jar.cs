namespace JarLabel.Core.Jars;

/// <summary>What a jar is now: the fold of its events.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Revision">How many events changed its contents.</param>
/// <param name="Contents">What is in it.</param>
/// <param name="Container">What it stands in.</param>
/// <param name="MixedAt">When it was mixed.</param>
/// <param name="Dates">Ready, test-from, use-by.</param>
/// <param name="Shelf">Where it stands.</param>
/// <param name="By">Who mixed it.</param>
/// <param name="Job">What it is for.</param>
/// <param name="Note">The newest note.</param>
public sealed record Jar(
    JarNumber Number,
    int Revision,
    Contents Contents,
    Container Container,
    DateTime MixedAt,
    KeepingDates Dates,
    string Shelf,
    string? By,
    string? Job,
    string? Note)
{
    /// <summary>How it last was tested; null when it never was.</summary>
    public TestResult? Test { get; init; }

    /// <summary>The day its drying test failed; null where it never did, or a later test passed. Such a jar has no use-by to promise.</summary>
    public DateOnly? FailedOn => Test is { Passed: false } failed ? failed.Day : null;

    /// <summary>What last changed its contents after the mixing; null when nothing did.</summary>
    public LastChange? Changed { get; init; }

    /// <summary>False once it is discarded, used up or taken back.</summary>
    public bool OnShelf { get; init; } = true;

    /// <summary>What was taken back with which the jar began: its mixing, blending, decanting; null where that stands.</summary>
    public string? TakenBack { get; init; }

    /// <summary>Why it is on no shelf: <c>used up</c>, <c>discarded</c>, <c>its mixing was taken back</c>.</summary>
    public string Gone => TakenBack is { } began ? $"its {began} was taken back" : Contents.IsEmpty ? "used up" : "discarded";

    /// <summary>The dates as the shop's drying tests say now, where they are clearly other than those on record; null where they are not.
    /// No event says them: they follow from the tests of all jars.</summary>
    public KeepingDates? Learned { get; init; }

    /// <summary>True where it was dated for flakes that were going off, and what was said against them was taken back since.</summary>
    public bool FlakesCleared { get; init; }

    /// <summary>The more careful of the dates on record and those the shop's tests, or its flakes, say now.</summary>
    public KeepingDates Careful => Learned is { } now ? Dates.Shortest(now) : Dates;

    /// <summary>What was found since that its dates do not know.</summary>
    public JarDoubts Doubts { get; init; } = JarDoubts.None;

    /// <summary>The day since which it is in doubt whether it dries hard, whatever its dates say; null where it is not.</summary>
    public DateOnly? DoubtedSince => FailedOn is null && Doubts.Since is { } since ? DateOnly.FromDateTime(since) : null;

    /// <summary>From when a drop is tried before use: from the date on record, or from when it came into doubt.</summary>
    public DateOnly TestFrom => Doubts.TestFrom(Careful.TestFrom);

    /// <summary>What is in it, or for an emptied jar what was: the glass is as dangerous as its last contents.</summary>
    public Contents Held { get; init; } = Contents;

    /// <summary>The jar after all its events, in order; a problem where they cannot be one jar's life.</summary>
    public static Result<Jar> Fold(JarNumber number, IEnumerable<JarEvent> events) =>
        JarLife.Of(number, events).Then<Jar>(life => life.Jar);

    /// <summary>How the jar stands at a moment, by the more careful of the dates on record and those the shop's tests say now.</summary>
    public JarState StateAt(DateTime moment) => OnShelf ? Careful.StateAt(moment, Test, inDoubt: Doubts.Any) : TakenBack is null ? JarState.Discarded : JarState.TakenBack;

    /// <summary>The jar when it still stands on a shelf; else a problem.</summary>
    public Result<Jar> DemandOnShelf() => OnShelf ? this : JarProblems.Gone(this);

    /// <summary>What goes when so much is poured out. What is within half a percent of all, as a bench reads it, is all; so is what leaves
    /// less than a bench can measure.</summary>
    /// <param name="amount">How much; null for all.</param>
    /// <param name="where">Where it was typed.</param>
    public Result<Contents> Take(Volume? amount, string where)
    {
        var part = amount is { } some ? some / Contents.Liquid : 1;
        return part > 1 + Reading ? JarProblems.NotSoMuch(Number, amount!.Value, Contents.Liquid, where)
            : part >= 1 - Reading || BenchAmount.IsNothing(Contents.Liquid * (1 - part)) ? Contents
            : Contents.Share(part);
    }

    internal static Result<Jar> Begin(JarNumber number, JarEvent happened) => happened is not IBeginning b ? JarProblems.NoBeginning(number, happened)
        : !b.Contents.IsLiquid ? JarProblems.NoLiquid(number, happened)
        : new Jar(number, 1, b.Contents, b.Container, b.MixedAt, b.Dates, b.Shelf, b.By, b.Job, b.Note)
        {
            Test = b.Test is { } test ? test with { OfMother = true } : null,
            Changed = happened switch
            {
                Blended => new LastChange("blended", happened.At),
                Decanted d => d.Changed,
                _ => null,
            },
        };

    /// <summary>The jar after one more event. Taking back is the work of <see cref="JarLife"/>, which knows what was before.</summary>
    internal Result<Jar> After(JarEvent happened) => happened switch
    {
        _ when !OnShelf => JarProblems.Gone(this),
        Labelled => this,
        Thinned t => Holding(Contents.With(t.Added), t).Then<Jar>(jar => (jar with { Container = t.Container ?? Container, Changed = new("thinned", t.At) }).Revised()),
        Thickened t => Holding(Contents.With(t.Added), t).Then<Jar>(jar => (jar with { Container = t.Container ?? Container, Dates = t.Dates, Changed = new("thickened", t.At) }).Revised()),
        PouredOut p => Less(p.Taken, p),
        Used u => Less(u.Taken, u),
        Tested { Passed: true } t when t.At < Dates.Ready => this, // What dries before the flakes are dissolved is no test of how long it keeps.
        Tested t => this with { Test = new(DateOnly.FromDateTime(t.At), t.Passed) { Slow = t.HowDried == Drying.Slow, At = t.At } },
        Moved { Dates: { } dates } m => (this with { Shelf = m.Shelf, Dates = dates }).Revised(),
        Moved m => this with { Shelf = m.Shelf },
        Redated r => (this with { Dates = r.Dates }).Revised(),
        Noted n => this with { Note = n.Text },
        Discarded => this with { OnShelf = false },
        _ => JarProblems.CannotFollow(Number, happened),
    };

    /// <summary>How far a reading of a jar's last drop may be off, as a fraction.</summary>
    private const double Reading = 0.005;

    private Result<Jar> Less(Contents taken, JarEvent happened) =>
        Contents.Without(taken) is { } left ? Holding(left, happened).Then<Jar>(jar => jar with { OnShelf = !left.IsEmpty }) : JarProblems.NotSoMuch(Number, taken.Liquid, Contents.Liquid, "VOLUME");

    private Result<Jar> Holding(Contents contents, JarEvent happened) => contents.IsEmpty || contents.IsLiquid
        ? this with { Contents = contents, Held = contents.IsEmpty ? Held : contents }
        : JarProblems.NoLiquid(Number, happened);

    private Jar Revised() => this with { Revision = Revision + 1 };
}

/// <summary>What last made a jar another one than it was mixed as, for its label.</summary>
/// <param name="Word">thinned, thickened, blended.</param>
/// <param name="At">When.</param>
public sealed record LastChange(string Word, DateTime At);
