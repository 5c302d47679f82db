using Ical.Net.DataTypes;
using JarLabel.Core.Reminders;
using Calendar = Ical.Net.Calendar;

namespace JarLabel.Tests.Reminders;

/// <summary>Our calendar file as another library reads it.</summary>
public class CalendarFileTests
{
    private static readonly DateTime Now = new(2026, 3, 9, 10, 0, 0);
    private static readonly DateTimeOffset Written = new(Now, TimeSpan.FromHours(-4));
    private static readonly KeepingDates Dates = new(new DateTime(2026, 3, 10, 10, 0, 0), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));

    [Fact, Cites(References.Rfc5545, "3.6.1, 3.3.4")]
    public void Another_library_reads_the_dates_of_a_jar()
    {
        var calendar = Calendar.Load(Encoding.UTF8.GetString(CalendarFile.Write(Of(Now), Written)))!;
        Assert.Equal("2.0", calendar.Version);
        Assert.Equal(
            ["Swirl jar 142-5|2026-03-09T12:00", "Jar 142-5 should be dissolved|2026-03-10T10:00", "Test jar 142-5|2026-07-09T00:00", "Use jar 142-5 by today (estimate)|2026-11-09T00:00"],
            calendar.Events.Select(e => $"{e.Summary}|{e.Start!.Value:yyyy-MM-ddTHH:mm}"));
        Assert.Equal([false, false, true, true], calendar.Events.Select(e => e.IsAllDay));
        Assert.Equal(4, calendar.Events.Select(e => e.Uid).Distinct().Count());
        Assert.All(calendar.Events, e => Assert.Equal(3, e.Sequence));
    }

    [Fact, Cites(References.Rfc5545, "3.3.10")]
    public void A_jar_is_swirled_every_two_hours_until_it_is_ready()
    {
        var calendar = Calendar.Load(Encoding.UTF8.GetString(CalendarFile.Write(Of(Now), Written)))!;
        var times = calendar.Events[0]!.GetOccurrences(new CalDateTime(2026, 3, 9)).Select(o => o.Period.StartTime.Value).ToArray();
        Assert.Equal(12, times.Length);
        Assert.Equal(new DateTime(2026, 3, 9, 12, 0, 0), times[0]);
        Assert.Equal(new DateTime(2026, 3, 10, 10, 0, 0), times[^1]);
    }

    /// <summary>Ten o'clock four hours behind UTC is 14:00 there. What is to be done at the bench is done by the bench's own clock, wherever the calendar is read.</summary>
    [Fact, Cites(References.Rfc5545, "3.8.7.2: DTSTAMP is in UTC; 3.3.5 form 1: local time without a zone floats; 3.3.10: UNTIL is of the kind of DTSTART")]
    public void Only_the_moment_of_writing_is_in_utc()
    {
        var text = Encoding.UTF8.GetString(CalendarFile.Write(Of(Now), Written));
        Assert.All(Calendar.Load(text)!.Events, e =>
        {
            Assert.Equal(("UTC", new DateTime(2026, 3, 9, 14, 0, 0)), (e.DtStamp!.TzId, e.DtStamp.Value));
            Assert.True(e.Start!.IsFloating);
        });
        Assert.Equal(4, text.Split("\r\n").Count(line => line.EndsWith('Z')));
        Assert.Contains(";UNTIL=20260310T100000\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_past_is_left_out() =>
        Assert.Equal(["Use jar 142-5 by today (estimate)"], Of(new DateTime(2026, 8, 1, 9, 0, 0)).Select(r => r.Title));

    [Fact]
    public void A_jar_whose_test_failed_is_neither_to_be_tested_nor_to_be_used() => Assert.Equal(
        ["Swirl jar 142-5", "Jar 142-5 should be dissolved"],
        JarReminders.Of("0123", JarNumber.From(142), 3, "1½ lb cut of garnet", Dates, Now, failed: true).Select(r => r.Title));

    /// <summary>Commas, semicolons, backslashes and line ends are the ones that need care; a long line is folded and no character is torn.</summary>
    [Fact, Cites(References.Rfc5545, "3.1 folding, 3.3.11 escaping")]
    public void Awkward_words_come_back_as_they_were()
    {
        const string Awkward = "½ lb, \"amber\"; a\\b\nnext äöü ≈ 中文 and on and on and on and on and on and on and on and on and on and on and on";
        var bytes = CalendarFile.Write([new Reminder("x@y", Awkward, Awkward, Now, false, 0)], Written);
        var lines = Encoding.UTF8.GetString(bytes).Split("\r\n");
        Assert.All(lines, line => Assert.True(Encoding.UTF8.GetByteCount(line) <= 75, line));
        Assert.DoesNotContain(lines, line => line.Contains('\n', StringComparison.Ordinal));
        var read = Calendar.Load(Encoding.UTF8.GetString(bytes))!.Events[0]!;
        Assert.Equal(Awkward, read.Summary);
        Assert.Equal(Awkward, read.Description);
    }

    private static IEnumerable<Reminder> Of(DateTime now) => JarReminders.Of("0123", JarNumber.From(142), 3, "1½ lb cut of garnet", Dates, now);
}
