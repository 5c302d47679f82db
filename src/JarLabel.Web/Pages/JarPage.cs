using JarLabel.Core.Hazards;
using JarLabel.Operations.Labels;
using JarLabel.Operations.Scanning;

namespace JarLabel.Web.Pages;

/// <summary>One jar: what it is and whether it is good, in the first glance; then how it is made, how to thin it, what is dangerous about it
/// and what happened to it. No script, one request.</summary>
internal static class JarPage
{
    private const string UseByMoved = "JL124";
    private const string LabelPromises = "JL359";
    private const string OlderRevision = "JL186";
    private const string NewerRevision = "JL216";
    private const string Gone = "JL187";

    /// <summary>The page of a jar.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="scanned">The jar, and what the code that led here says.</param>
    /// <param name="nav">The links on top.</param>
    /// <param name="still">True for a page that is kept as a file: it has no buttons and says of when it is.</param>
    /// <param name="head">More for the head.</param>
    internal static string Of(Workbench bench, Scanned scanned, Markup nav, bool still = false, Markup head = default)
    {
        var (history, hazards) = (scanned.Jar.History, scanned.Jar.Hazards);
        var jar = history.Jar;
        var text = jar.Contents.IsEmpty ? null : JarWords.Of(bench, history, hazards);
        return Frame.Page(
            $"Jar {jar.Number}: {JarTitle.Of(jar, bench.Catalog)}",
            Html.Of(
                $"""
                {(still ? default : Frame.Dated(bench))}{OnTop(scanned)}
                {JarParts.Headline(bench, history)}
                {ProblemPage.Cautions(scanned.Jar.Cautions.Where(c => !IsOnTop(scanned, c)), jar.Number, still ? [] : JarParts.Asked(bench, jar))}
                {(still ? JarParts.Kept(bench) : Html.Of($"{SwirlPart.Of(bench, history)}{JarParts.Buttons(bench, history)}"))}
                {Html.If(AidComesFirst(hazards), () => Html.Of($"""<section class="warn" aria-labelledby="aid"><h2 id="aid">First aid</h2>{JarParts.List(FirstAidWords.Of(hazards, bench.Settings.PoisonCenter))}</section>"""))}
                <div class="two">
                <div>{JarParts.Recipe(bench, jar)}{Html.If(jar.OnShelf, () => Html.Of($"{JarParts.Thinning(text)}{JarParts.Dates(jar, text)}"))}</div>
                <div>{Hazards(bench, hazards, text)}</div>
                <div>{JarParts.Jobs(bench, history)}{JarParts.History(history)}</div>
                </div>
                """),
            nav,
            script: !still && SwirlPart.IsOf(bench, jar),
            head: head);
    }

    /// <summary>Of what can poison, whom to call stands before everything that can wait.</summary>
    private static bool AidComesFirst(HazardAssessment hazards) => hazards.PoisonWording || hazards.MethanolCounts;

    /// <summary>A label that is out of date, because the jar is another by now or keeps otherwise, and a jar that is gone, are told before
    /// anything else.</summary>
    private static bool IsOnTop(Scanned scanned, Problem caution) =>
        caution.Code is OlderRevision or NewerRevision or Gone or LabelPromises || (caution.Code == UseByMoved && scanned.Jar.History.IsLabelled);

    private static Markup OnTop(Scanned scanned) => Html.All(scanned.Jar.Cautions.Where(c => IsOnTop(scanned, c)).Select(c => Html.Of(
        $"""<p class="warn" role="alert">{(c.Code is Gone or NewerRevision ? "" : "Out-of-date label. ")}{c.Text.In(PageSpelling.Any)} <small>{c.Code}</small></p>""")));

    private static Markup Hazards(Workbench bench, HazardAssessment hazards, LabelText? text) => Html.Of(
        $"""
        <section aria-labelledby="hazards"><h2 id="hazards">Hazards</h2>
        <p class="signal">{hazards.SignalText ?? ""}</p>
        <div class="signs">{Pictograms.Of(hazards.Pictograms)}</div>
        {JarParts.List(hazards.StatementTexts(bench.Catalog))}
        {Html.If(hazards.PoisonWording, () => Html.Of($"<div class=\"signs\">{Pictograms.Of([PoisonWords.Sign])}</div><p class=\"warn\">{PoisonWords.Text}</p>"))}
        {Listed("First aid", AidComesFirst(hazards) ? [] : FirstAidWords.Of(hazards, bench.Settings.PoisonCenter))}
        {Listed("Precautions", text?.Lists["precautions"] ?? [])}
        {Listed("At the bench", text?.Lists["handling"] ?? hazards.Doubts)}
        </section>
        """);

    private static Markup Listed(string title, IReadOnlyList<string> sentences) =>
        Html.If(sentences.Count > 0, () => Html.Of($"<h3>{title}</h3>{JarParts.List(sentences)}"));
}
