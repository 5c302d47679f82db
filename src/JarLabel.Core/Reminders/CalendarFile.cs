namespace JarLabel.Core.Reminders;

/// <summary>Writes reminders as an iCalendar file (RFC 5545). Times are the bench's own, without a zone: a clock on the wall. Only the moment of writing is told in UTC, as the standard wants it.</summary>
public static class CalendarFile
{
    private const int LongestLine = 75;
    private const string Moment = "yyyyMMdd'T'HHmmss", Day = "yyyyMMdd";

    /// <summary>The file's bytes.</summary>
    /// <param name="reminders">The entries.</param>
    /// <param name="written">When it was written.</param>
    public static byte[] Write(IEnumerable<Reminder> reminders, DateTimeOffset written)
    {
        var text = new StringBuilder();
        Lines(text, "BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//JarLabel//JarLabel//EN", "CALSCALE:GREGORIAN");
        foreach (var reminder in reminders)
        {
            Lines(text, [.. Entry(reminder, written.UtcDateTime)]);
        }

        Lines(text, "END:VCALENDAR");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static IEnumerable<string> Entry(Reminder of, DateTime stamp)
    {
        yield return "BEGIN:VEVENT";
        yield return $"UID:{Escaped(of.Id)}";
        yield return $"DTSTAMP:{Text(stamp, Moment)}Z";
        yield return string.Create(CultureInfo.InvariantCulture, $"SEQUENCE:{of.Revision}");
        yield return of.WholeDay ? $"DTSTART;VALUE=DATE:{Text(of.At, Day)}" : $"DTSTART:{Text(of.At, Moment)}";
        if (!of.WholeDay)
        {
            yield return "DURATION:PT15M";
        }

        if (of is { EveryHours: { } hours, Until: { } until })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"RRULE:FREQ=HOURLY;INTERVAL={hours};UNTIL={Text(until, Moment)}");
        }

        yield return $"SUMMARY:{Escaped(of.Title)}";
        yield return $"DESCRIPTION:{Escaped(of.Text)}";
        yield return "TRANSP:TRANSPARENT";
        yield return "END:VEVENT";
    }

    private static string Text(DateTime moment, string form) => moment.ToString(form, CultureInfo.InvariantCulture);

    private static string Escaped(string text) => text
        .Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace(";", "\\;", StringComparison.Ordinal)
        .Replace(",", "\\,", StringComparison.Ordinal)
        .Replace("\n", "\\n", StringComparison.Ordinal);

    /// <summary>Lines end with CR LF; a line longer than 75 octets goes on after a blank, never inside a character.</summary>
    private static void Lines(StringBuilder text, params ReadOnlySpan<string> lines)
    {
        foreach (var line in lines)
        {
            var octets = 0;
            foreach (var rune in line.EnumerateRunes())
            {
                if (octets + rune.Utf8SequenceLength > LongestLine)
                {
                    text.Append("\r\n ");
                    octets = 1;
                }

                text.Append(rune.ToString());
                octets += rune.Utf8SequenceLength;
            }

            text.Append("\r\n");
        }
    }
}

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
