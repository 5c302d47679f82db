namespace JarLabel.Bench.Answers;

/// <summary>A wall notice that was written.</summary>
internal sealed record NoticeJson(
    string File,
    string Sheet,
    string Shelf,
    int Jars,
    double TotalMilliliters,
    string SignalWord,
    bool Toxic,
    double DistanceMeters,
    double RoomCubicMeters,
    double? PeakPpm,
    double? LimitPpm,
    bool LimitUnverified,
    IReadOnlyList<string> Limits,
    IReadOnlyList<string> LimitsPassed,
    IReadOnlyList<string> Unverified)
{
    /// <summary>How many bottles stand there beside the jars.</summary>
    public int Bottles { get; init; }
}
