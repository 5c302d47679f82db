namespace JarLabel.Core.Reminders;

/// <summary>One entry of a calendar.</summary>
/// <param name="Id">Stays the same when the calendar is written again, so that a calendar program replaces the entry.</param>
/// <param name="Title">What to do.</param>
/// <param name="Text">More about it.</param>
/// <param name="At">When; at midnight it is meant for the whole day where <paramref name="WholeDay"/> says so.</param>
/// <param name="WholeDay">True for an entry of a day.</param>
/// <param name="Revision">Rises when the same entry changes.</param>
public sealed record Reminder(string Id, string Title, string Text, DateTime At, bool WholeDay, int Revision)
{
    /// <summary>Every so many hours again; null for once.</summary>
    public int? EveryHours { get; init; }

    /// <summary>Not again after this moment.</summary>
    public DateTime? Until { get; init; }
}
