using JarLabel.Core.Reminders;

namespace JarLabel.Operations.Keeping;

/// <summary>Writes the dates of the jars on the shelves as a calendar. It changes no jar.</summary>
public static class ShelfCalendar
{
    /// <summary>Writes the calendar; a jar whose use-by has moved by the shop's tests stands there with the sooner dates.</summary>
    public static Result<string> Write(Workbench bench, ShelfList list, string file)
    {
        return LedgerAccess.Record(bench, step =>
        {
            step.Write(bench, file, CalendarFile.Write(list.Jars.SelectMany(jar => Of(bench, list, step.LedgerId, jar)), bench.OnClock));
            return Result<string>.Of(file);
        });
    }

    private static IEnumerable<Reminder> Of(Workbench bench, ShelfList list, string ledger, Store.Index.JarEntry jar)
    {
        var dates = list.Known.DatesOf(jar);
        var what = string.Create(CultureInfo.InvariantCulture, $"{VulgarFraction.Of(jar.Cut?.PoundsPerUsGallon ?? 0)} lb cut of {jar.Flakes}, shelf {jar.Shelf}");
        return JarReminders.Of(ledger, JarNumber.From(jar.Number), jar.Revision, what, dates with { TestFrom = TestFrom(list, jar, bench.Now) }, bench.Now, failed: jar.FailedOn is not null, inDoubt: list.Doubts(jar).Any);
    }

    /// <summary>The day on which a jar is to be tested: today where it is in doubt or its state asks for it, else the day on record, and where that is past and a test that it passed
    /// counts, the first day on which that counts no longer.</summary>
    private static DateOnly TestFrom(ShelfList list, Store.Index.JarEntry jar, DateTime now)
    {
        var today = DateOnly.FromDateTime(now);
        return list.Doubts(jar).Any || list.StateOf(jar, now) is JarState.Test or JarState.Past ? today
            : list.TestFrom(jar) is var from && from < today && jar.Test is { Passed: true } test ? test.AgainFrom
            : from;
    }
}
