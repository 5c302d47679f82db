namespace JarLabel.Core.Jars;

/// <summary>Whether a jar's event could have been recorded by this program: the rules of what is typed, for what comes from elsewhere.</summary>
public static class JarEventCheck
{
    private const int LongestBy = 60, LongestJob = 120, LongestNote = 500, LongestTest = 1440;
    private const double Coldest = -20, Warmest = 40, LargestContainer = 1_000_000;

    private static readonly string[] Changes = ["thinned", "thickened", "blended"];

    /// <summary>Everything that it says and could not have been recorded.</summary>
    public static IReadOnlyList<Problem> Faults(JarEvent happened, string where)
    {
        var bounds = new EventBounds(where);
        bounds.Moment("at", happened.At);
        if (happened is IBeginning beginning)
        {
            Check(bounds, beginning);
        }

        Check(bounds, happened);
        return bounds.Problems;
    }

    private static void Check(EventBounds bounds, IBeginning beginning)
    {
        Check(bounds, "contents", beginning.Contents);
        Check(bounds, beginning.Container);
        Check(bounds, beginning.Dates);
        bounds.Moment("mixedAt", beginning.MixedAt);
        bounds.Text("shelf", beginning.Shelf, EventBounds.LongestName);
        bounds.Text("by", beginning.By, LongestBy);
        bounds.Text("job", beginning.Job, LongestJob);
        bounds.Text("note", beginning.Note, LongestNote);
        if (beginning.Test is { } test)
        {
            bounds.Day("test/day", test.Day);
        }
    }

    private static void Check(EventBounds bounds, JarEvent happened)
    {
        switch (happened)
        {
            case Mixed mixed:
                bounds.Number("benchCelsius", mixed.Bench.DegreesCelsius, Coldest, Warmest);
                break;
            case Blended blended:
                bounds.Number("from", blended.From.Count, 2, EventBounds.MostParts);
                break;
            case Decanted { Changed: { } changed }:
                bounds.Word("changed/word", changed.Word, Changes);
                bounds.Moment("changed/at", changed.At);
                break;
            case Thinned thinned:
                Check(bounds, "added", thinned.Added);
                Check(bounds, thinned.Container);
                break;
            case Thickened thickened:
                Check(bounds, "added", thickened.Added);
                Check(bounds, thickened.Dates);
                Check(bounds, thickened.Container);
                break;
            case PouredOut poured:
                Check(bounds, "taken", poured.Taken);
                break;
            case Used used:
                Check(bounds, "taken", used.Taken);
                bounds.Text("job", used.Job, LongestJob);
                break;
            default:
                CheckSmall(bounds, happened);
                break;
        }
    }

    private static void CheckSmall(EventBounds bounds, JarEvent happened)
    {
        switch (happened)
        {
            case Tested { DryMinutes: { } minutes }:
                bounds.Number("dryMinutes", minutes, 1, LongestTest);
                break;
            case Moved moved:
                bounds.Text("shelf", moved.Shelf, EventBounds.LongestName);
                Check(bounds, moved.Dates);
                break;
            case Redated redated:
                Check(bounds, redated.Dates);
                bounds.Text("shelf", redated.Shelf, EventBounds.LongestName);
                bounds.Text("setting", redated.Setting, EventBounds.LongestName);
                break;
            case Noted noted:
                bounds.Text("text", noted.Text, LongestNote);
                break;
            case Discarded discarded:
                bounds.Text("why", discarded.Why, LongestJob);
                break;
            case Undone undone:
                bounds.Word("what", undone.What, JarEventJson.Names);
                break;
            case Labelled labelled:
                bounds.Number("revision", labelled.Revision, 0, EventBounds.MostCounted);
                Check(bounds, labelled.File, labelled.Design, labelled.Sheet, labelled.Position, labelled.Payload, labelled.Sha256);
                bounds.Number("copies", labelled.Copies ?? 1, 1, EventBounds.MostCounted);
                break;
            default:
                break;
        }
    }

    /// <summary>What is written down of a label.</summary>
    internal static void Check(EventBounds bounds, string file, string design, string sheet, int position, string payload, string? sha256)
    {
        bounds.Written("file", file);
        bounds.Text("design", design, EventBounds.LongestName);
        bounds.Text("sheet", sheet, EventBounds.LongestName);
        bounds.Number("position", position, 1, EventBounds.MostCounted);
        bounds.Demand(payload.Length <= EventBounds.LongestFile, "payload", payload, $"at most {EventBounds.LongestFile} characters are");
        bounds.Demand(sha256 is null || (sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower)), "sha256", sha256 ?? "", "64 lower-case hexadecimal digits are");
    }

    private static void Check(EventBounds bounds, string member, Contents contents)
    {
        bounds.Number($"{member}/resins", contents.Resins.Count, 1, EventBounds.MostParts);
        bounds.Number($"{member}/solvents", contents.Solvents.Count, 1, EventBounds.MostParts);
        foreach (var resin in contents.Resins)
        {
            Check(bounds, $"{member}/resins", resin);
        }

        foreach (var solvent in contents.Solvents)
        {
            Check(bounds, $"{member}/solvents", solvent);
        }
    }

    private static void Check(EventBounds bounds, string member, ResinPart? resin)
    {
        bounds.Demand(resin is not null, member, "null", "a grade with its weight is");
        if (resin is not null)
        {
            bounds.Text($"{member}/grade", resin.Grade ?? "", EventBounds.LongestName);
            bounds.Amount($"{member}/grams", resin.Weight.Grams);
            bounds.Day($"{member}/flakeDate", resin.FlakeDate ?? default(DateOnly).AddYears(EventBounds.FirstYear));
        }
    }

    private static void Check(EventBounds bounds, string member, SolventPart? solvent)
    {
        bounds.Demand(solvent is not null, member, "null", "a solvent with its volume and weight is");
        if (solvent is not null)
        {
            bounds.Text($"{member}/solvent", solvent.Solvent ?? "", EventBounds.LongestName);
            bounds.Amount($"{member}/milliliters", solvent.Poured.Milliliters);
            bounds.Amount($"{member}/grams", solvent.Weight.Grams);
        }
    }

    private static void Check(EventBounds bounds, Container? container)
    {
        if (container is not null)
        {
            bounds.Demand(Enum.IsDefined(container.Material), "container/material", container.Material.ToString(), "a material that is known is");
            bounds.Amount("container/milliliters", container.Holds?.Milliliters ?? LargestContainer, LargestContainer);
        }
    }

    private static void Check(EventBounds bounds, KeepingDates? dates)
    {
        if (dates is not null)
        {
            bounds.Demand(dates.Ready.Kind == DateTimeKind.Unspecified, "dates/ready", dates.Ready.ToString("O", System.Globalization.CultureInfo.InvariantCulture), "local time is");
            bounds.Day("dates/ready", DateOnly.FromDateTime(dates.Ready));
            bounds.Day("dates/testFrom", dates.TestFrom);
            bounds.Day("dates/useBy", dates.UseBy);
            bounds.Number("dates/basis/tests", dates.Basis?.Tests ?? 0, 0, EventBounds.MostCounted);
            bounds.Number("dates/basis/related", dates.Basis?.Related ?? 0, 0, EventBounds.MostCounted);
        }
    }
}
