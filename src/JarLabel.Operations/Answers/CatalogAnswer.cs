namespace JarLabel.Operations.Answers;

/// <summary>What is said of the grades and alcohols that there are.</summary>
internal static class CatalogAnswer
{
    private const string FromMemory = "memory";

    /// <summary>Every grade.</summary>
    internal static Answer Grades(ShopCatalog catalog)
    {
        var grades = catalog.Grades.Rows;
        return Answer.Of(
            new Screen().Title($"{grades.Count} grades of flakes").Gap()
                .Table(["name to type", "what it is", "color", "wax", "form", "source"], [.. grades.Select(Row)]),
            new GradesAnswerJson([.. grades.Select(GradeJson.Of)]),
            c => c.GradesAnswerJson);
    }

    /// <summary>Every alcohol, with its hazards by the shop's rules.</summary>
    internal static Answer Solvents(Workbench bench)
    {
        SolventJson[] solvents = [.. bench.Catalog.Solvents.Rows.Select(solvent => SolventJson.Of(solvent, MixtureClassifier.Classify(solvent.Compositions, bench.Rules, bench.Catalog)))];
        return Answer.Of(
            new Screen().Title($"{solvents.Length} alcohols").Gap()
                .Table(["name to type", "what it is", "hazards", "source"], [.. solvents.Select(Row)]),
            new SolventsAnswerJson(solvents),
            c => c.SolventsAnswerJson);
    }

    private static string[] Row(Grade grade) => [grade.Id, grade.Name, grade.Color, grade.Waxy ? "waxy" : "dewaxed", grade.Form, Source(grade.Source, grade.Unverified)];

    private static string[] Row(SolventJson solvent) =>
        [solvent.Id, solvent.Name, $"{(solvent.Signal is { } signal ? signal + ": " : "")}{string.Join(", ", solvent.Classes)}", Source(solvent.Source, solvent.Unverified)];

    private static string Source(string source, bool unverified) => unverified ? $"{FromMemory}, unverified" : source.Split(':')[0];
}

/// <summary>A grade for a program.</summary>
internal sealed record GradeJson(string Id, string Name, IReadOnlyList<string> Aliases, string Color, bool Waxy, string Form, string Note, string Source, bool Unverified)
{
    internal static GradeJson Of(Grade grade) => new(grade.Id, grade.Name, grade.Aliases, grade.Color, grade.Waxy, grade.Form, grade.Note, grade.Source, grade.Unverified);
}

/// <summary>An alcohol for a program.</summary>
internal sealed record SolventJson(
    string Id, string Name, IReadOnlyList<string> Aliases, string? Signal, IReadOnlyList<string> Classes, bool CompositionKnown, string? Note, string Source, bool Unverified)
{
    internal static SolventJson Of(Solvent solvent, HazardAssessment hazards) => new(
        solvent.Id, solvent.Name, solvent.Aliases, hazards.SignalText, [.. hazards.ClassCodes], solvent.CompositionKnown, solvent.Note, solvent.Source, solvent.Unverified);
}

/// <summary>What <c>grades</c> says to a program.</summary>
internal sealed record GradesAnswerJson(IReadOnlyList<GradeJson> Grades);

/// <summary>What <c>solvents</c> says to a program.</summary>
internal sealed record SolventsAnswerJson(IReadOnlyList<SolventJson> Solvents);
