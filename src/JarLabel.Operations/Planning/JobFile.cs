using JarLabel.Core.Reading;

namespace JarLabel.Operations.Planning;

/// <summary>Reads a job from a JSON file: a list of lines, <c>{ "for": "pad", "area": "14 sq ft", "coats": 8 }</c>, each with its own
/// <c>cut</c>, <c>spread</c> and <c>waste</c> (per cent) where they are not the usual ones.</summary>
public static class JobFile
{
    /// <summary>The longest job: it is held against every jar line by line.</summary>
    internal const int MostLines = 1000;

    /// <summary>The lines, or every fault of the file.</summary>
    public static Result<IReadOnlyList<JobLine>> Read(string file)
    {
        try
        {
            return StrictJson.ReadList(Path.GetFileName(file), PlanProblems.FileCode, DataFile.Read(file), Line).Then(lines => lines.Count is 0 or > MostLines
                ? new Problem(PlanProblems.FileCode, lines.Count == 0 ? PlanProblems.NoLines : PlanProblems.TooManyLines, file)
                : Result<IReadOnlyList<JobLine>>.Of(lines));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return PlanProblems.Unreadable(file, fault.Message);
        }
    }

    private static JobLine Line(FieldReader fields)
    {
        var kind = fields.Choice("for", JobKind.ByWord) ?? JobKind.ByWord["pad"];
        return new JobLine(
            kind,
            Value(fields, "area", AreaText.Read) ?? Area.FromSquareMeters(1),
            Math.Max(1, fields.Count("coats", 1, JobLine.MostCoats)),
            (fields.Has("cut") ? Value(fields, "cut", CutText.Read) : null) ?? kind.UsualCut,
            (fields.Has("spread") ? Value(fields, "spread", SpreadText.Read) : null) ?? SpreadText.Read(JobLine.UsualSpread, "spread").Require(),
            fields.OptionalNumber("waste", 0, 100 * JobLine.MostWaste) / 100 ?? kind.UsualWaste);
    }

    private static T? Value<T>(FieldReader fields, string name, Func<string, string, Result<T>> read)
        where T : struct
    {
        var text = fields.Text(name);
        if (text.Length == 0 || read(text, name).TryGet(out var value, out var problems))
        {
            return text.Length == 0 ? null : read(text, name).Require();
        }

        foreach (var problem in problems)
        {
            fields.Refuse(name, problem.Text);
        }

        return null;
    }
}
