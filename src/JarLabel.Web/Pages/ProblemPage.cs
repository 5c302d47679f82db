namespace JarLabel.Web.Pages;

/// <summary>What is wrong, with the same codes and words as on the command line.</summary>
internal static class ProblemPage
{
    /// <summary>A page of problems.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="back">The way back; null for the list of jars.</param>
    /// <param name="looking">True when somebody only looked, and there was nothing to record.</param>
    internal static string Of(IReadOnlyList<Problem> problems, string? back = null, bool looking = false) => Frame.Page(
        looking ? "Not found" : "Not done",
        Html.Of(
            $"""
            <h1>{(looking ? "This is not here" : "This could not be done")}</h1>
            {List(looking ? problems.Select(problem => problem with { Where = null }) : problems)}
            {(looking ? default : Nothing)}
            <p class="do"><a class="go" href="{back ?? "/"}">{(back is null ? "All jars" : "Back")}</a></p>
            """),
        Frame.Served);

    /// <summary>What a problem means for the ledger.</summary>
    internal static Markup Nothing => Html.Own("<p>Nothing was recorded.</p>");

    internal static Markup List(IEnumerable<Problem> problems) => Html.All(problems.Select(One));

    /// <summary>Cautions, which hinder nothing but should be known.</summary>
    /// <param name="cautions">The cautions.</param>
    /// <param name="own">The jar whose page it is; null for any other.</param>
    /// <param name="except">Verbs of steps that the page leads to anyway.</param>
    internal static Markup Cautions(IEnumerable<Problem> cautions, JarNumber? own = null, params IReadOnlyCollection<string> except) =>
        Html.All(cautions.Select(PageSpelling.Any.Of).Select(c => Html.Of($"""<p class="told">{c.Message} <small>{c.Code}{(IsFile(c.Where) ? $", {Place(c.Where!)}" : "")}</small></p>{StepLinks.Row(c.Text.Remedies.Where(step => !except.Contains(step.Verb)), own)}""")));

    /// <summary>Cautions above a form: the first two as they are, more of them folded, so that the first field stays in sight.</summary>
    internal static Markup CautionsFolded(IReadOnlyList<Problem> cautions, JarNumber? own) => Html.Of(
        $"""{Cautions(cautions.Take(MostOpen), own)}{Html.If(cautions.Count > MostOpen, () => Html.Of($"""<details class="more"><summary>{CountWords.Of(cautions.Count - MostOpen, "caution")} more</summary>{Cautions(cautions.Skip(MostOpen), own)}</details>"""))}""");

    private const int MostOpen = 2;

    /// <summary>Each problem in a line.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="own">The jar whose page it is; null for any other.</param>
    internal static Markup Lines(IEnumerable<Problem> problems, JarNumber? own = null) => Html.All(problems.Select(problem => Line(problem, own)));

    private static Markup Line(Problem problem, JarNumber? own) =>
        Html.Of($"""<p>{problem.Text.In(PageSpelling.Any)} <small>{problem.Code}{(problem.Where is { } where ? $", {Place(where)}" : "")}</small></p>{StepLinks.Row(problem.Text.Remedies, own)}""");

    /// <summary>Where a fault is. A file keeps its name and that of its folder; the way to it on the machine is of no use on another.</summary>
    private static string Place(string where) =>
        IsFile(where) && Parted(where) is (var file, var inside) && Path.GetFileName(Path.GetDirectoryName(file)) is { } folder ? $"{Path.Combine(folder, Path.GetFileName(file))}{inside}" : where;

    private static bool IsFile(string? where) => where is not null && Path.IsPathFullyQualified(where);

    /// <summary>A file, and the place in it.</summary>
    private static (string File, string Inside) Parted(string where) => where.LastIndexOf("#/", StringComparison.Ordinal) is >= 0 and var mark ? (where[..mark], where[mark..]) : (where, "");

    private static Markup One(Problem problem) => Html.Of($"""<div class="warn" role="alert">{Line(problem, null)}</div>""");
}
