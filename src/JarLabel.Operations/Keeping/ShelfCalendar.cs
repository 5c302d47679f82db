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
        var doubts = list.Doubts(jar);
        dates = dates with { TestFrom = doubts.Any ? DateOnly.FromDateTime(bench.Now) : doubts.TestFrom(dates.TestFrom) };
        return JarReminders.Of(ledger, JarNumber.From(jar.Number), jar.Revision, what, dates, bench.Now, failed: jar.FailedOn is not null, inDoubt: doubts.Any, toTest: list.StateOf(jar, bench.Now) is JarState.Test or JarState.Past, testAgain: jar.Test is { Passed: true } test && test.AgainFrom > DateOnly.FromDateTime(bench.Now) ? test.AgainFrom : null);
    }
}
