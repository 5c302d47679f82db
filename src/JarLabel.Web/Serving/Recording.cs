using System.Globalization;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Web.Forms;
using JarLabel.Web.Guards;
using JarLabel.Web.Pages;

namespace JarLabel.Web.Serving;

/// <summary>The forms: shown blank, worked out, and recorded. A form that is sent twice, by a tap too many or a page loaded again, is
/// recorded once.</summary>
internal sealed class Recording(BenchDoor door, FormTokens tokens)
{
    private const string ChangedSince = "JL150";

    private readonly Once once = new();

    /// <summary>A form to fill in.</summary>
    internal Reply Blank(Place place, Visitor who) => Scene(place, who, new Entry(new Dictionary<string, string>())).TryGet(out var scene, out var problems)
        ? Reply.Page(FormPage.Of(scene.Form.NeedsNothing ? Worked(scene) : scene))
        : Reply.NotFound(problems);

    /// <summary>A form as sent: worked out, or recorded.</summary>
    internal Reply Take(Place place, Visitor who, IReadOnlyDictionary<string, string> fields)
    {
        var entry = new Entry(fields);
        if (!Scene(place, who, entry).TryGet(out var scene, out var problems))
        {
            return Reply.NotFound(problems);
        }

        return entry.Text("do") switch
        {
            "live" => Reply.Page(Worked(scene).Live().Text),
            "record" => once.Of($"{who.Device} {scene.Address}", entry.Text("once"), key => Record(scene, Seen(entry), key)),
            _ => Reply.Page(FormPage.Of(Worked(scene))),
        };
    }

    /// <summary>What was recorded under a key.</summary>
    internal Reply Done(string key) => once.Done(key) is { } page ? Reply.Page(page) : Reply.SeeOther("/");

    private Result<FormScene> Scene(Place place, Visitor who, Entry entry)
    {
        var form = BenchForms.Named(place.Step);
        return door.Open(rehearse: true).Then(bench => place.Jar.Length == 0
            ? new FormScene(form, bench, null, tokens.Of(who.Device), entry, [], default)
            : Reading.Find(bench, place.Jar).Then<FormScene>(found => new FormScene(form, bench, found.Jar.History, tokens.Of(who.Device), entry, [], default)));
    }

    /// <summary>The form with what it would come to; nothing is recorded.</summary>
    private static FormScene Worked(FormScene scene) => scene.Form.Do(scene.Bench, Number(scene), scene.Entry).TryGet(out var outcome, out var problems)
        ? scene with { Result = StepResult.Of(scene.Bench, outcome) }
        : scene with { Problems = problems };

    private (Reply Reply, string? Done) Record(FormScene scene, int? seen, string key)
    {
        if (seen is null)
        {
            return (Reply.Refused(403, WebProblems.OldForm()), null);
        }

        return door.Open(scene.History is null ? null : seen).Then(bench => scene.Form.Do(bench, Number(scene), scene.Entry).Then<string>(outcome => DonePage.Of(bench, outcome)))
            .TryGet(out var page, out var problems)
                ? (Reply.SeeOther($"/done/{key}"), page)
                : (Told(scene, problems), null);
    }

    /// <summary>Back to the form with its faults; where somebody else was first, to the jar instead.</summary>
    private static Reply Told(FormScene scene, IReadOnlyList<Problem> problems) => problems.Any(problem => problem.Code == ChangedSince)
        ? Reply.Page(ProblemPage.Of(problems, $"/J/{scene.History!.Jar.Number}"), 409)
        : Reply.Page(FormPage.Of(scene with { Problems = problems }), 422);

    private static JarNumber Number(FormScene scene) => scene.History?.Jar.Number ?? default;

    private static int? Seen(Entry entry) => int.TryParse(entry.Text("seen"), NumberStyles.None, CultureInfo.InvariantCulture, out var steps) ? steps : null;
}
