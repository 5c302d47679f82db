using JarLabel.Core;

namespace JarLabel.Store.Index;

/// <summary>What the ledger does not know itself: how to read an event, and what a jar's events add up to.</summary>
public interface IJarReader
{
    /// <summary>Raised whenever the same events would give another entry; a ledger indexed by another version is indexed anew when
    /// it is opened.</summary>
    int Version { get; }

    /// <summary>Everything that is wrong with one event taken alone; empty when it can be read.</summary>
    IReadOnlyList<Problem> Faults(EventRow row);

    /// <summary>Everything for which one event, taken alone, could not have been recorded here, what cannot be read included: what comes from
    /// elsewhere is held against the rules of what is typed.</summary>
    IReadOnlyList<Problem> Refusals(EventRow row) => Faults(row);

    /// <summary>Everything that is wrong with the life of a bag or bottle, its events in order.</summary>
    IReadOnlyList<Problem> LifeFaults(IReadOnlyList<EventRow> events) => [];

    /// <summary>The jar that the events, all of one jar and in order, add up to.</summary>
    Result<JarEntry> Fold(IReadOnlyList<EventRow> events);
}
