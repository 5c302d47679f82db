namespace JarLabel.Store.Checking;

/// <summary>What a check of the whole shop found.</summary>
/// <param name="Events">Events read.</param>
/// <param name="Jars">Jars folded.</param>
/// <param name="Files">Written files that are there and unchanged.</param>
/// <param name="Damage">Everything that is not as it was recorded.</param>
/// <param name="Notices">What may be so on purpose: a label file that was removed.</param>
public sealed record VerifyReport(long Events, int Jars, int Files, IReadOnlyList<Problem> Damage, IReadOnlyList<Problem> Notices)
{
    /// <summary>True when nothing is damaged.</summary>
    public bool Sound => Damage.Count == 0;
}
