using JarLabel.Operations.Scanning;

namespace JarLabel.Web.Serving;

/// <summary>The forms: shown blank, worked out, and recorded. A form that is sent twice, by a tap too many or a page loaded again, is
/// recorded once.</summary>
internal sealed class Recording(WorkbenchFactory factory, FormTokens tokens, PaperRuns papers, Devices devices)
{
    private const string ChangedSince = "JL150", NotPaired = "JL605", NotOurs = "JL184", FoundKey = "found";

    private readonly IdempotencyCache once = new();
    private readonly PhotoFinds finds = new();

    /// <summary>A form to fill in.</summary>
    /// <param name="place">Which.</param>
    /// <param name="who">Who asks.</param>
    /// <param name="given">What is filled in already, by the names of its fields.</param>
    /// <param name="came">The address by which it was asked for; null for this machine's own.</param>
    internal Reply Blank(Route place, Client who, IReadOnlyDictionary<string, string> given, string? came) => TakesPhoto(place) && given.TryGetValue(FoundKey, out var found) ? Shown(place, who, finds.Of(who.Device, found)) : Scene(place, who, new FormValues(Unobserved(place, given)) { Came = came }).TryGet(out var scene, out var problems)
        ? Reply.Page(FormPage.Of(Filled(scene, given.Count > 0)))
        : Reply.NotFound(problems);

    /// <summary>A form as sent: worked out, or recorded.</summary>
    /// <param name="place">Which.</param>
    /// <param name="who">Who sends it.</param>
    /// <param name="entry">What it holds.</param>
    /// <param name="ours">True when it came from a page of this run of the server, opened by the same device.</param>
    internal Reply Take(Route place, Client who, FormValues entry, bool ours)
    {
        if (!Scene(place, who, entry).TryGet(out var scene, out var problems))
        {
            return Reply.NotFound(problems);
        }

        if (Moment(entry) is { Ok: false } unread)
        {
            scene = scene with { Problems = [.. unread.Problems, .. scene.Form.Faults(scene.Bench, Number(scene), scene.Values)] };
            return entry.Text("do") == "live" ? Reply.Page(scene.Live().Text) : Reply.Page(FormPage.Of(scene), 422);
        }

        return entry.Text("do") switch
        {
            "live" => Reply.Page(Worked(scene).Live().Text),
            "record" when !scene.Form.Step.Looks && !ours => Old(place, who, scene),
            "record" when !scene.Form.Step.Looks => once.Of(
                $"{who.Device} {scene.Address}",
                entry,
                key => Kept(() => Record(place, scene, who, key)),
                old: () => Old(place, who, scene),
                other: () => Again(place, who, scene, [WebProblems.RecordedOtherwise(scene.Look)], 409)),
            _ => Reply.Page(FormPage.Of(Worked(scene))),
        };
    }

    /// <summary>True for a form to which a photo of labels may be sent.</summary>
    internal static bool TakesPhoto(Route place) => Form(place).Step.TakesPhoto;

    /// <summary>What stands behind the codes of a photo: the page of the one thing, or a list.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="place">The form that the photo was sent from.</param>
    /// <param name="who">Who sent it.</param>
    /// <param name="codes">What was read, at least one.</param>
    internal Reply Found(Workbench bench, Route place, Client who, IReadOnlyList<string> codes)
    {
        // A code that is none of ours, on a can or a poster, is beside the point where a label was read.
        var found = new ScannedCodes(bench, codes);
        return (found.Jars, found.Supplies, found.Faults.All(fault => fault.Code == NotOurs)) switch
        {
            ([var jar], [], true) => Reply.SeeOther(Reading.Address(jar)),
            ([], [var one], true) when StepWay.To(SupplyAnswer.Shown(one.Supply)).Address is { } way => Reply.SeeOther(way),
            _ => Reply.SeeOther($"/{place.Step}?{FoundKey}={finds.Keep(who.Device, codes)}"),
        };
    }

    /// <summary>The form after a photo in which nothing could be read.</summary>
    internal Reply Unread(Route place, Client who, IReadOnlyList<Problem> problems, int status) => Photographed(place, who, _ => PhotoPart.Unread(problems), "Nothing was read", status);

    private Reply Shown(Route place, Client who, IReadOnlyList<string> codes) => Photographed(place, who, bench => PhotoPart.Found(bench, codes), "In the photo");

    private Reply Photographed(Route place, Client who, Func<Workbench, Markup> said, string title, int status = 200) => Scene(place, who, new FormValues(new Dictionary<string, string>())).TryGet(out var scene, out var problems)
        ? Reply.Page(FormPage.Of(scene with { Photo = said(scene.Bench), PhotoTitle = title }), status)
        : Reply.NotFound(problems);

    /// <summary>What was recorded under a key.</summary>
    internal Reply Done(string key) => once.Done(key) is { } page ? Reply.Page(page.Html()) : Reply.SeeOther("/");

    /// <summary>How printing stands of what was recorded under a key: a part of that page.</summary>
    internal Reply Paper(string key) => once.Done(key) is { } page ? Reply.Page(page.Paper().Text) : Reply.SeeOther("/");

    private Result<FormScene> Scene(Route place, Client who, FormValues entry)
    {
        var (form, token) = (Form(place), tokens.Of(who.Device));
        return factory.Open(rehearse: true, at: Moment(entry)?.TryGet(out var at, out _) == true ? at : null, unread: form.Step.ReadsShopFiles, came: entry.Came).Then(bench => place.Jar.Length == 0
            ? new FormScene(form, bench, null, token, once.NewKey(), entry, [], default) { Seen = Events(bench) }
            : Reading.Find(bench, place.Jar).Then<FormScene>(found => new FormScene(form, bench, found.Jar.History, token, once.NewKey(), entry, [], default) { Seen = found.Jar.History.Steps }));
    }

    /// <summary>How many events the ledger has; none where it cannot be read, which is told when something is recorded.</summary>
    private static long Events(Workbench bench) => LedgerAccess.Read<long>(bench, view => view.EventCount).TryGet(out var count, out _) ? count : 0;

    /// <summary>When it happened, where that is said: what was done yesterday is entered as of yesterday. Null for now.</summary>
    private Result<DateTime>? Moment(FormValues entry) => entry.Text(StepForm.At.Name) is { } text ? ValueReader.Moment(factory.Now)(text, StepForm.At.Name) : default(Result<DateTime>?);

    private static StepForm Form(Route place) => place.Jar.Length == 0 ? StepForms.OfShop[place.Step] : StepForms.OfJar[place.Step];

    /// <summary>What a link fills in: everything but what somebody must see or measure.</summary>
    private static Dictionary<string, string> Unobserved(Route place, IReadOnlyDictionary<string, string> given) =>
        given.Where(one => !Form(place).Step.Fields.Any(field => field.IsObserved && field.Name == one.Key)).ToDictionary(StringComparer.Ordinal);

    /// <summary>A form as it is opened: with what it would come to, as far as that can be said yet.</summary>
    private static FormScene Filled(FormScene scene, bool given) => scene.Hindered.Count > 0 ? scene
        : scene.Form.Step.ShowsAtOnce || (given && scene.Form.Step.Looks) ? Worked(scene)
        : given && scene.Form.Step.WorksOut && Worked(scene) is { Problems.Count: 0 } worked ? worked
        : scene;

    /// <summary>The form with what it would come to; nothing is recorded.</summary>
    private static FormScene Worked(FormScene scene) => scene.Form.Do(scene.Bench, Number(scene), scene.Values).TryGet(out var outcome, out var problems)
        ? scene with { Result = scene.Form.Step.Looks ? StepResult.Looked(scene.Bench, outcome) : StepResult.Of(scene.Bench, outcome), Hands = outcome.Jar is { } jar && !scene.Form.Step.Looks ? HandsPart.Of(scene.Bench, jar) : default }
        : scene with { Problems = problems };

    /// <summary>Does it; a fault that comes when something is recorded already carries the word of it.</summary>
    private static (Reply Reply, DonePage? Done) Kept(Func<(Reply Reply, DonePage? Done)> record)
    {
        var kept = KeptWork.WatchPart();
        try
        {
            // Recorded and yet refused would be sent again, and recorded again.
            var said = record();
            return said.Done is null && kept.Any ? throw new InvalidOperationException("Something was recorded, and no page tells of it.") : said;
        }
        catch (Exception fault) when (kept.Any && fault is not OutOfMemoryException)
        {
            throw new FaultAfterKeeping(kept.Words, fault);
        }
    }

    private (Reply Reply, DonePage? Done) Record(Route place, FormScene scene, Client who, string key)
    {
        if (Seen(scene.Values) is not { } seen)
        {
            return (Old(place, who, scene), null);
        }

        return factory.Open(scene.History is null ? null : seen, at: scene.Bench.Dated ? scene.Bench.Now : null, events: scene.History is null ? seen : null)
            .Then(bench => scene.Form.Printing(bench, Number(scene), scene.Values) is { } wanted ? Printed(scene, who, bench, wanted) : Done(scene, who, bench))
            .TryGet(out var page, out var problems)
                ? (Reply.SeeOther($"/done/{key}"), page)
                : (Told(place, who, scene, problems), null);
    }

    private Result<Outcome> Do(FormScene scene, Client who, Workbench bench) => (who.Paired is { } device
            ? devices.While(device, () => scene.Form.Do(bench, Number(scene), scene.Values))
            : scene.Form.Do(bench, Number(scene), scene.Values))
        .Then<Outcome>(outcome => outcome.And([.. bench.Unmoved, .. bench.Waiting]));

    private Result<DonePage> Done(FormScene scene, Client who, Workbench bench) =>
        Do(scene, who, bench).Then<DonePage>(outcome => new DonePage(bench, outcome, null));

    /// <summary>The step, and its label to a printer. The step is tried first, so that no printer is asked for what cannot be done; then the
    /// printer is asked, so that nothing is recorded that it would not print.</summary>
    private Result<DonePage> Printed(FormScene scene, Client who, Workbench bench, PrintRequest wanted) =>
        factory.Open(bench.StepsSeen, rehearse: true, bench.Dated ? bench.Now : null, bench.EventsSeen)
            .Then(rehearsal => scene.Form.Do(rehearsal, Number(scene), scene.Values))
            .Then(_ => papers.Ask(bench, wanted))
            .Then(service =>
            {
                var done = Do(scene, who, bench)
                    .Then<DonePage>(outcome => new DonePage(bench, outcome, papers.Begin(service, wanted.To, Title(scene, outcome))));
                if (!done.Ok)
                {
                    service.Dispose();
                }

                return done;
            });

    private static string Title(FormScene scene, Outcome outcome) => outcome.Jar is { } done ? $"Jar {done.History.Jar.Number}" : scene.Form.Step.Title;

    /// <summary>Back to the form with its faults.</summary>
    private Reply Told(Route place, Client who, FormScene scene, IReadOnlyList<Problem> problems) =>
        problems.Any(problem => problem.Code == ChangedSince) ? Again(place, who, scene, problems, 409)
        : problems.Any(problem => problem.Code == NotPaired) ? Reply.Refused(401, problems)
        : Reply.Page(FormPage.Of(scene with { Problems = problems }), 422);

    /// <summary>A form of another run of the server, of which nobody knows whether it was recorded.</summary>
    private Reply Old(Route place, Client who, FormScene scene) => Again(place, who, scene, [WebProblems.MayBeRecorded(scene.Look)], 403);

    /// <summary>The form once more as things stand now, under a key of its own, with what was typed.</summary>
    private Reply Again(Route place, Client who, FormScene sent, IReadOnlyList<Problem> problems, int status) => Scene(place, who, sent.Values).TryGet(out var scene, out var faults)
        ? Reply.Page(FormPage.Of(scene with { Problems = problems }), status)
        : Reply.NotFound(faults);

    private static JarNumber Number(FormScene scene) => scene.History?.Jar.Number ?? default;

    private static int? Seen(FormValues entry) => int.TryParse(entry.Text("seen"), NumberStyles.None, CultureInfo.InvariantCulture, out var steps) ? steps : null;
}
