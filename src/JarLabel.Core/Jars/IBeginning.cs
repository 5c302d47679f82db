namespace JarLabel.Core.Jars;

/// <summary>An event with which the life of a jar begins: a batch mixed, jars blended, a part poured off into a jar of its own.</summary>
public interface IBeginning
{
    /// <summary>What went in.</summary>
    Contents Contents { get; }

    /// <summary>The jar it went into.</summary>
    Container Container { get; }

    /// <summary>Ready, test-from and use-by as estimated then.</summary>
    KeepingDates Dates { get; }

    /// <summary>Where the jar stands.</summary>
    string Shelf { get; }

    /// <summary>When the shellac in it was mixed; of several batches the oldest.</summary>
    DateTime MixedAt { get; }

    /// <summary>Who did it.</summary>
    string? By { get; }

    /// <summary>What it is for.</summary>
    string? Job { get; }

    /// <summary>Anything else.</summary>
    string? Note { get; }

    /// <summary>The test that holds for what went in, when there was one.</summary>
    TestResult? Test { get; }
}
