using JarLabel.Core.Hazards;
using JarLabel.Core.Supplies;
using JarLabel.Operations.Scanning;
using JarLabel.Operations.Supplies;

namespace JarLabel.Web.Pages;

/// <summary>Where a photo of labels is taken and sent, and what was read in it. Without script the telephone's own field takes the photo and a button sends
/// it; with it one large button takes it, and it sends itself.</summary>
internal static class PhotoPart
{
    private const string OtherKind = "JL380", NoCode = "JL182", TooHard = "JL665";

    /// <summary>The form of the photo.</summary>
    internal static Markup Form(FormScene scene) => Html.Of(
        $"""
        <form class="photo" method="post" action="{scene.Address}" enctype="multipart/form-data" data-photo="{PhotoBody.Most}">{FormPage.Hidden("token", scene.Token)}
        <div class="shoot"><label for="photo">Take a photo of the labels</label><input type="file" id="photo" name="{PhotoBody.Name}" accept="image/*" capture="environment" required aria-describedby="h-photo"></div>
        <span class="hint" id="h-photo">Several labels may be in one photo.</span>
        <button>Read the photo</button>
        <p class="busy" role="status"></p></form>
        """);

    /// <summary>Why nothing was read, and what helps.</summary>
    internal static Markup Unread(IReadOnlyList<Problem> problems) => Html.Of(
        $"""
        <div class="warn" role="alert"><p>Nothing was read in the photo.</p>{ProblemPage.Lines(PageSpelling.Any.Of([.. problems.Select(problem => problem with { Where = null })]))}</div>
        {(problems.Any(problem => problem.Code == OtherKind) ? ToJpeg : problems.Any(problem => problem.Code is NoCode or TooHard) ? ToSee : default)}
        """);

    private static Markup ToSee { get; } = Html.Own(
        """<ul><li>Go closer, until one label fills the picture, and hold still.</li><li>Turn the jar or the lamp until no glare lies on the code, and no shadow.</li><li>Wipe the label dry.</li><li>Or type the number beside the code, below.</li></ul>""");

    private static Markup ToJpeg { get; } = Html.Own(
        """<ul><li>Take the photo with the button here: most telephones then send a JPEG.</li><li>Or choose JPEG in the settings of the camera, where the kind of picture it keeps is set.</li><li>Or open the picture, save or send a copy of it as JPEG, and choose that.</li></ul>""");

    /// <summary>What stands behind the codes of a photo.</summary>
    internal static Markup Found(Workbench bench, IReadOnlyList<string> codes)
    {
        if (codes.Count == 0)
        {
            return Html.Own("""<p class="told">What was read in that photo is no longer kept. Take it once more.</p>""");
        }

        var found = new ScannedCodes(bench, codes);
        return Html.Of(
            $"""
            {Html.If(!found.Nothing, () => Html.Of($"""<section aria-labelledby="found"><h2 id="found">In the photo: {found.Title}</h2><ul class="jars">{found.Jars.Select(jar => Jar(bench, jar))}{found.Supplies.Select(one => Supply(bench, one))}</ul></section>"""))}
            {Html.If(found.Faults.Count > 0, () => Html.Of($"""<div class="warn" role="alert">{(found.Nothing ? Html.Own("<p>No label of this shop was read in the photo.</p>") : default)}{ProblemPage.Lines(PageSpelling.Any.Of(found.Faults))}</div>"""))}
            """);
    }

    private static Markup Jar(Workbench bench, Scanned scanned)
    {
        var jar = scanned.Jar.History.Jar;
        var state = jar.StateAt(bench.Now);
        var gone = state is JarState.Past or JarState.Discarded or JarState.TakenBack;
        return Html.Of(
            $"""
            <li><a href="{Reading.Address(scanned)}"><b>{VulgarFraction.Of(jar.Contents.Cut?.PoundsPerUsGallon ?? 0)}</b>
            <span class="name">{string.Join(" + ", jar.Contents.Grades.Select(grade => bench.Catalog.Grades.Find(grade)?.Name ?? grade))}, jar {jar.Number}</span>
            <span class="how"><span{Html.Own(gone ? " class=\"past\"" : "")}>{StateShape.Of(state)}{(jar.OnShelf ? JarStateWords.Of(state) : jar.Gone)}</span>{Html.If(jar.OnShelf, () => Html.Of($" <span>{UseBy(jar)}</span>"))}{Html.If(scanned.OutOfDate, () => Html.Own(" <span class=\"past\">this label is out of date</span>"))}{Html.If(scanned.Jar.Hazards.PoisonWording, () => Html.Of($" <span class=\"past\">{PoisonWords.Words[0]}</span>"))}</span></a></li>
            """);
    }

    private static string UseBy(Jar jar) => jar.FailedOn is { } failed ? FailureWords.On(failed)
        : jar.DoubtedSince is { } since ? $"in doubt since {DateWords.Of(since)}"
        : $"use by {DateWords.Estimate(jar.Careful.UseBy)}";

    private static Markup Supply(Workbench bench, SupplyOutcome outcome)
    {
        var one = outcome.Supply;
        return Html.Of(
            $"""
            <li><a href="{StepWay.To(SupplyAnswer.Shown(one)).Address ?? "/"}"><b></b>
            <span class="name">{SupplyAnswer.What(bench, one)}, {$"{one.Kind.Word()} {one.Number}"}</span>
            <span class="how"><span>{(one.OnHand ? $"{one.Shown(one.Rest, bench.Metric)} left" : "gone")}</span></span></a></li>
            """);
    }
}
