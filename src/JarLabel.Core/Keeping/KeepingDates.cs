namespace JarLabel.Core.Keeping;

/// <summary>When a batch is ready, when to try a drop before use, and until when it is expected to dry hard. All are estimates.</summary>
/// <param name="Ready">The flakes should be dissolved.</param>
/// <param name="TestFrom">From this day, try a drop on glass before use.</param>
/// <param name="UseBy">Expected to dry hard until this day.</param>
public sealed record KeepingDates(DateTime Ready, DateOnly TestFrom, DateOnly UseBy)
{
    /// <summary>On what the use-by stands beside published claims; null where no jar of the shop was ever tested.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public KeepingBasis? Basis { get; init; }

    /// <summary>How a jar with these dates stands at a moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="test">How it last was tested. A failure ends its use; a pass makes it good for a while past the test date; one
    /// that was made past the use-by says that for as long it may be used where drops are tried first.</param>
    /// <param name="inDoubt">True when its flakes were found bad since, which no test has settled.</param>
    public JarState StateAt(DateTime moment, TestResult? test = null, bool inDoubt = false)
    {
        var day = DateOnly.FromDateTime(moment);
        return test is { Passed: false } || (day > UseBy && (test is null || test.Day <= UseBy || !test.HoldsOn(day))) ? JarState.Past
            : day > UseBy ? JarState.Test
            : moment < Ready ? JarState.Dissolving
            : inDoubt || (day >= TestFrom && test?.HoldsOn(day) != true) ? JarState.Test
            : JarState.Good;
    }

    /// <summary>The more cautious of two: ready when both are, the rest as early as either.</summary>
    public KeepingDates Shortest(KeepingDates other)
    {
        return new(
            Ready > other.Ready ? Ready : other.Ready,
            TestFrom < other.TestFrom ? TestFrom : other.TestFrom,
            UseBy < other.UseBy ? UseBy : other.UseBy)
        {
            Basis = UseBy <= other.UseBy ? Basis : other.Basis,
        };
    }
}

/// <summary>On what an estimated use-by stands beside published claims.</summary>
/// <param name="Tests">Drying tests of this shop's jars of the same flakes and solvent.</param>
/// <param name="Related">Tested jars of other flakes or solvents.</param>
public sealed record KeepingBasis(int Tests, int Related);
