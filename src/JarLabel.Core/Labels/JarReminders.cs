using JarLabel.Core.Reminders;

namespace JarLabel.Core.Labels;

/// <summary>What a calendar says of a jar: swirl, ready, test, use-by. What is past is left out, and of a
/// jar whose drying test failed what would promise anything.</summary>
public static class JarReminders
{
    /// <summary>So many hours a jar that dissolves may stand before it is swirled again. Common practice says every hour or two.</summary>
    public const int SwirlHours = 2;

    /// <summary>The entries of one jar.</summary>
    /// <param name="ledger">What tells this shop's jars from another's.</param>
    /// <param name="jar">The jar's number; null for a batch that is only planned.</param>
    /// <param name="revision">Its revision.</param>
    /// <param name="what">What is in it.</param>
    /// <param name="dates">Its dates.</param>
    /// <param name="now">The moment.</param>
    /// <param name="failed">True when its last drying test failed.</param>
    /// <param name="inDoubt">True when it is in doubt whether it dries hard: then there is no day to use it by.</param>
    public static IEnumerable<Reminder> Of(string ledger, JarNumber? jar, int revision, string what, KeepingDates dates, DateTime now, bool failed = false, bool inDoubt = false)
    {
        var name = jar is { } known ? $"jar {known}" : "the new jar";
        var day = DateOnly.FromDateTime(now);
        if (dates.Ready > now)
        {
            yield return At("swirl", $"Swirl {name}", $"{what}: swirl it so that no lump sets at the bottom.", now.AddHours(SwirlHours)) with { EveryHours = SwirlHours, Until = dates.Ready };
            yield return At("ready", $"{Capital.Of(name)} should be dissolved", $"{what}: strain it before use. An estimate.", dates.Ready);
        }

        if (!failed && dates.TestFrom >= day)
        {
            yield return OnDay("test", $"Test {name}", $"{what}: {(inDoubt ? "in doubt, " : dates.TestFrom > dates.UseBy ? "past its estimated use-by, " : "")}from today try a few drops on glass before use.", dates.TestFrom);
        }

        if (!failed && !inDoubt && dates.UseBy >= day)
        {
            yield return OnDay("use-by", $"Use {name} by today (estimate)", $"{what}: expected to dry hard until about today; a few drops on glass decide.", dates.UseBy);
        }

        Reminder At(string kind, string title, string text, DateTime at) => new(Id(kind), title, text, at, WholeDay: false, revision);
        Reminder OnDay(string kind, string title, string text, DateOnly on) => new(Id(kind), title, text, on.ToDateTime(TimeOnly.MinValue), WholeDay: true, revision);
        string Id(string kind) => jar is { } j
            ? string.Create(CultureInfo.InvariantCulture, $"jar-{j.Value}-{kind}@{ledger}")
            : string.Create(CultureInfo.InvariantCulture, $"plan-{now:yyyyMMddHHmmss}-{Word(what)}-{kind}@{ledger}");
    }

    private static string Word(string what) => string.Concat(what.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));
}
