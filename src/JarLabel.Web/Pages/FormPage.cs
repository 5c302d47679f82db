using JarLabel.Operations.Labels;

namespace JarLabel.Web.Pages;

/// <summary>A form for fingers: large fields, what is seldom needed folded away, what follows shown below. It works without script; with it
/// the result is shown while one types.</summary>
internal static class FormPage
{
    internal static string Of(FormScene scene)
    {
        var form = scene.Form.Step;
        var fields = scene.Form.Fields(scene.Bench, scene.History?.Jar, scene.Values);
        var hindered = scene.Hindered;
        var title = scene.History is { } history ? $"{form.Title}: jar {history.Jar.Number}" : form.Title;
        return Frame.Page(
            scene.Problems.Count > 0 && hindered.Count == 0 ? $"{scene.Problems.Count} to put right: {title}" : scene.PhotoTitle is { } read ? $"{read}: {title}" : title,
            Html.Of(
                $"""
                <h1>{title}</h1>
                {Frame.Dated(scene.Bench)}{Jar(scene)}{Known(scene)}
                {(form.Says is { } says ? Html.Of($"<p>{says}</p>") : default)}
                {Html.If(form.TakesPhoto, () => Html.Of($"{PhotoPart.Form(scene)}{scene.Photo}"))}
                {(hindered.Count > 0 ? Hindered(scene, hindered) : Html.Of($"{Summary(scene.Problems, fields, scene.History?.Jar.Number)}{Form(scene, fields)}"))}
                {Html.If(form.Verb == "shop show", () => KeepPart.Of(scene.Bench))}
                """),
            Frame.Served,
            script: hindered.Count == 0);
    }

    private static Markup Form(FormScene scene, IReadOnlyList<FormField> fields)
    {
        var form = scene.Form.Step;
        return Html.Of(
            $"""
            {Html.If(form.WorksOut, () => Html.Of($"""<section id="result" class="result" aria-live="polite" aria-label="What to pour and weigh">{scene.Hands}</section>"""))}
            <form method="post" action="{scene.Address}"{Html.Own(form.WorksOut ? " data-live" : "")}{Html.Own(form.Looks ? "" : " data-records")} autocomplete="off">
            {Hidden("token", scene.Token)}{Hidden("once", scene.Key)}{Hidden("seen", $"{scene.Seen}")}{fields.Select(field => field.Was is { } was ? Hidden(was.Name, was.Value) : default)}
            {Fields(scene, [.. fields.Where(field => !field.Seldom)])}
            {Seldom(scene, [.. fields.Where(field => field.Seldom)])}
            {Html.If(form.WorksOut || (form.Looks && (scene.Result.Text.Length > 0 || !form.TakesPhoto)), () => Html.Of($"""<section id="live" class="live" aria-label="What follows">{(scene.Result.Text.Length > 0 ? scene.Result : Html.Own(form.Looks ? fields.Count == 0 ? "" : "<p>The answer is shown here.</p>" : "<p>What to do, what comes of it and the label are shown here.</p>"))}</section>"""))}
            {Html.If(form.WorksOut, () => Html.Own("""<button class="quiet" name="do" value="show">Work it out</button>"""))}
            {(form.Looks ? Html.If(fields.Count > 0, () => Html.Of($"""<button{Html.Own(form.TakesPhoto ? " class=\"quiet\"" : "")} name="do" value="show">Show</button>""")) : Html.Of($"""<button name="do" value="record">{form.Button}</button>"""))}
            </form>
            """);
    }

    internal static Markup Hidden(string name, string value) => Html.Of($"""<input type="hidden" name="{name}" value="{value}">""");

    private static Markup Jar(FormScene scene) => scene.History is not { } history ? default : Html.Of(
        $"""<p><a href="/J/{history.Jar.Number}">{JarTitle.Of(history.Jar, scene.Bench.Catalog)}</a>; holds {JarParts.Holds(scene.Bench, history.Jar)}</p>""");

    /// <summary>What is to be known of the jar before anything is done with it; once it is worked out, that tells it.</summary>
    private static Markup Known(FormScene scene) => scene.History is { } history && scene.Result.Text.Length == 0 ? ProblemPage.CautionsFolded(JarSeen.Cautions(scene.Bench, history, JarWords.Hazards(scene.Bench, history.Jar)), history.Jar.Number) : default;

    /// <summary>What hinders it: here where it is of no field, else the way to the field.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="fields">The fields of the form.</param>
    /// <param name="own">The jar whose page it is; null for any other.</param>
    internal static Markup Summary(IReadOnlyList<Problem> problems, IReadOnlyList<FormField> fields, JarNumber? own = null) => Html.If(problems.Count > 0, () => Html.Of(
        $"""<div class="warn" role="alert">{ProblemPage.Nothing}{ProblemPage.Lines(problems.Where(problem => !fields.Any(field => Is(field, problem))), own)}{Marked(problems, fields)}</div>"""));

    /// <summary>What stands against the step whatever is filled in, with the way out of it.</summary>
    private static Markup Hindered(FormScene scene, IReadOnlyList<Problem> hindered) => Html.Of(
        $"""<div class="warn" role="alert">{Html.If(scene.Problems.Count > 0, () => ProblemPage.Nothing)}{ProblemPage.Lines(hindered, scene.History?.Jar.Number)}</div>""");

    private static Markup Marked(IReadOnlyList<Problem> problems, IReadOnlyList<FormField> fields) => Html.All(fields
        .Where(field => problems.Any(problem => Is(field, problem)))
        .Select(field => Html.Of($"""<p><a href="#f-{field.Name}">{field.Label}</a>: see below.</p>""")));

    private static bool Is(FormField field, Problem problem) => problem.Where == field.Name;

    private static Markup Seldom(FormScene scene, IReadOnlyList<FormField> fields) => Html.If(fields.Count > 0, () => Html.Of(
        $"""<details{Html.Own(fields.Any(field => Wanted(scene, field)) ? " open" : "")}><summary>More</summary>{Fields(scene, fields)}</details>"""));

    /// <summary>The fields in their order. What is chosen needs more room than what is written, and stands in wider columns.</summary>
    private static Markup Fields(FormScene scene, IReadOnlyList<FormField> fields)
    {
        var known = scene.Form.Step.Known.SelectMany(one => one.All).ToHashSet();
        var runs = new List<List<FormField>>();
        foreach (var field in fields)
        {
            if (runs.Count == 0 || Kind(runs[^1][^1]) != Kind(field))
            {
                runs.Add([]);
            }

            runs[^1].Add(field);
        }

        return Html.All(runs.Select(run => known.Contains(run[0].Name) ? Known(scene, run) : Html.Of($"""<div class="fields{(IsChosen(run[0]) ? " picks" : "")}">{run.Select(field => One(scene, field))}</div>""")));

        (bool, bool) Kind(FormField field) => (IsChosen(field), known.Contains(field.Name));
    }

    /// <summary>What one may know, to choose among, and the fields of what was chosen. The script or the stylesheet shows those alone; where neither does, all are there, and
    /// what is filled in says it.</summary>
    private static Markup Known(FormScene scene, List<FormField> fields)
    {
        var (all, chosen) = (scene.Form.Step.Known, scene.Form.Known(scene.Values));
        return Html.If(fields.Count > 0, () => Html.Of(
            $"""
            <fieldset class="known"><legend>What do you know?</legend>
            <div class="ways">{all.Select((one, place) => Html.Of($"""<label><input type="radio" name="{StepForm.Knows}" value="{one.Value}" data-way="{place + 1}"{Html.Own(one == chosen ? " checked" : "")}><span>{one.Words}</span></label>"""))}</div>
            <div class="fields">{fields.Select(field => One(scene.Problems, field, scene.Values, scene.History?.Jar.Number, string.Join(' ', all.Index().Where(one => one.Item.All.Contains(field.Name)).Select(one => $"in{one.Index + 1}"))))}</div></fieldset>
            """));
    }

    private static bool IsChosen(FormField field) => field.Choices is not null;

    private static bool Wanted(FormScene scene, FormField field) =>
        scene.Problems.Any(problem => Is(field, problem)) || (scene.Values.Text(field.Name) is not null && field.Value != field.First);

    private static Markup One(FormScene scene, FormField field) => One(scene.Problems, field, scene.Values, scene.History?.Jar.Number);

    /// <summary>A field with what is wrong with it.</summary>
    /// <param name="all">The problems of the whole form.</param>
    /// <param name="field">The field.</param>
    /// <param name="values">What was filled in.</param>
    /// <param name="own">The jar whose page it is; null for any other.</param>
    /// <param name="also">Classes that it has besides.</param>
    internal static Markup One(IReadOnlyList<Problem> all, FormField field, FormValues values, JarNumber? own = null, string also = "")
    {
        Problem[] problems = [.. all.Where(problem => Is(field, problem))];
        var faults = problems.Select(problem => Html.Of($"""<span class="fault">{problem.Text.In(PageSpelling.Any)} <small>{problem.Code}</small></span>{StepLinks.Row(problem.Text.Remedies, own)}"""));
        return field.Tick
            ? Html.Of($"""<div><label class="pick"><input type="checkbox" id="f-{field.Name}" name="{field.Name}" value="yes"{Html.Own(values.Ticked(field.Name) ? " checked" : "")}>{field.Label}</label></div>""")
            : field is { Large: true, Choices: { } found } ? Html.Of($"""<fieldset class="large{(field.Beside ? " beside" : "")}"{Html.Own(problems.Length > 0 ? " aria-invalid=\"true\"" : "")}><legend>{field.Label}</legend>{found.Where(choice => choice.Value.Length > 0).Select((choice, place) => Large(field, choice, place))}<span class="hint" id="h-{field.Name}">{field.Hint}{faults}</span></fieldset>""")
            : Html.Of($"""<div{Classes(problems.Length > 0 ? "wide" : field.Usual.Count > 0 || field is { Was: not null, Choices: null } ? "tap" : field.Units is not null ? "amounts" : "", also)}><label for="f-{field.Name}">{field.Label}</label>{Control(field, problems.Length > 0)}{Taps(field)}<span class="hint" id="h-{field.Name}">{field.Hint}{faults}</span></div>""");
    }

    /// <summary>What stands on a button beside others; what is longer has a row of its own.</summary>
    private const int LongestTap = 16;

    private static Markup Classes(params IEnumerable<string> names) => string.Join(' ', names.Where(name => name.Length > 0)) is { Length: > 0 } some ? Html.Of($" class=\"{some}\"") : default;

    private static Markup Large(FormField field, (string Value, string Words) choice, int place) => Html.Of(
        $"""<label class="pick"><input type="radio" name="{field.Name}" value="{choice.Value}"{(place == 0 ? Html.Of($" id=\"f-{field.Name}\"") : default)} aria-describedby="h-{field.Name}"{Html.Own(choice.Value == field.Value ? " checked" : "")}>{choice.Words}</label>""");

    /// <summary>Usual values; the script shows them, because without it they would do nothing.</summary>
    private static Markup Taps(FormField field) => Html.If(field.Usual.Count > 0, () => Html.Of(
        $"""<div class="taps{(field.Usual.Any(usual => usual.Words.Length > LongestTap) ? " long" : "")}" data-for="{field.Name}" hidden>{field.Usual.Select(usual => Tap(field, usual))}</div>"""));

    private static Markup Tap(FormField field, (string Value, string Words) usual) => field.Units is not null && field.Parted(usual.Value) is var (figure, unit) && figure != usual.Value
        ? Html.Of($"""<button type="button" value="{figure}" data-unit="{unit}">{usual.Words}</button>""")
        : Html.Of($"""<button type="button" value="{usual.Value}">{usual.Words}</button>""");

    private static Markup Control(FormField field, bool faulty)
    {
        var common = Html.Of($"""id="f-{field.Name}" name="{field.Name}" aria-describedby="h-{field.Name}"{Html.Own(faulty ? " aria-invalid=\"true\"" : "")}""");
        return field.Choices is { } choices
            ? Html.Of($"""<select {common}>{choices.Select(choice => Html.Of($"""<option value="{choice.Value}"{Html.Own(choice.Value == field.Value ? " selected" : "")}>{choice.Words}</option>"""))}</select>""")
            : field.Lines ? Html.Of($"""<textarea {common} rows="{Math.Max(2, 1 + (field.Value ?? "").Split('\n').Length)}" autocapitalize="off" spellcheck="false">{Html.Own("\n")}{field.Value ?? ""}</textarea>""")
            : field.Units is { } units ? Amount(field, common, units)
            : Html.Of($"""<input {common} value="{field.Value ?? ""}" autocapitalize="off" spellcheck="false">""");
    }

    /// <summary>A figure with its unit beside it.</summary>
    private static Markup Amount(FormField field, Markup common, IReadOnlyList<(string Value, string Words)> units)
    {
        var (figure, unit) = field.Parted(field.Value ?? "");
        return Html.Of(
            $"""<span class="amount"><input {common} value="{figure}" inputmode="decimal" autocapitalize="off" spellcheck="false"><select name="{FormField.UnitOf(field.Name)}" aria-label="{field.Label}: unit">{units.Select(one => Html.Of($"""<option value="{one.Value}"{Html.Own(one.Value == unit ? " selected" : "")}>{one.Words}</option>"""))}</select></span>""");
    }
}
