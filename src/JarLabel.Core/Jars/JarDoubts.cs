namespace JarLabel.Core.Jars;

/// <summary>What was found since a jar was dated that it was dated without knowing. A test that the jar passed since then settles it for as long as a test holds. No
/// event of the jar says it: it follows from what was done with bags and other jars.</summary>
/// <param name="BadFlakes">Bags of which flakes are in it and which were found to be going off after it was mixed.</param>
/// <param name="FailedKin">Jars with liquid of the same batch whose drops stayed soft.</param>
public sealed record JarDoubts(IReadOnlyList<Bag> BadFlakes, IReadOnlyList<FailedKin> FailedKin)
{
    /// <summary>Nothing.</summary>
    public static JarDoubts None { get; } = new([], []);

    /// <summary>True when there is anything.</summary>
    public bool Any => BadFlakes.Count > 0 || FailedKin.Count > 0;

    /// <summary>When it came into doubt; null where it is not.</summary>
    public DateTime? Since => Any ? BadFlakes.Select(bag => bag.Bad!.At).Concat(FailedKin.Select(kin => kin.At)).Min() : null;

    /// <summary>The first day on which a test that settled all or some of it counts no longer; null where none did.</summary>
    public DateOnly? AgainFrom { get; init; }

    /// <summary>True where flakes in it were found to be going off after it was mixed, whatever tests it passed since: it keeps less long than it was dated.</summary>
    public bool Shortened { get; init; }

    /// <summary>True where the label on it still gives a use-by, as if nothing were known.</summary>
    public bool StillPromised { get; init; }

    /// <summary>True where there is anything to know: it is in doubt, or will be again.</summary>
    public bool Matters => Any || AgainFrom is not null || Shortened;

    /// <summary>From when a drop is tried before use.</summary>
    /// <param name="onRecord">The day on record.</param>
    public DateOnly TestFrom(DateOnly onRecord) =>
        ((DateOnly?[])[onRecord, Since is { } since ? DateOnly.FromDateTime(since) : null, AgainFrom]).OfType<DateOnly>().Min();

    /// <summary>What to say of a jar.</summary>
    public IReadOnlyList<Problem> Cautions(JarNumber jar) => Cautions([(jar, this)]);

    /// <summary>What to say of several jars, once for each bag and each failed jar.</summary>
    public static IReadOnlyList<Problem> Cautions(IEnumerable<(JarNumber Jar, JarDoubts Doubts)> jars)
    {
        var all = jars.ToArray();
        return
        [
            .. all.SelectMany(one => one.Doubts.BadFlakes.Select(bag => (one.Jar, Bag: bag))).GroupBy(one => one.Bag.Number).Select(of => BagCautions.OfJars(of.First().Bag, [.. of.Select(one => one.Jar).Order()])),
            .. all.SelectMany(one => one.Doubts.FailedKin.Select(kin => (one.Jar, Kin: kin))).GroupBy(one => one.Kin).Select(of => of.Key.Caution([.. of.Select(one => one.Jar).Order()])),
        ];
    }
}

/// <summary>A jar that failed its test.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="At">When.</param>
public readonly record struct FailedKin(JarNumber Jar, DateTime At)
{
    /// <summary>The day of the test.</summary>
    public DateOnly Day => DateOnly.FromDateTime(At);

    /// <summary>What to say of other jars with liquid of the same batch.</summary>
    public Problem Caution(IReadOnlyList<JarNumber> jars) => JarProblems.KinFailed(this, jars);
}
