using System.CommandLine;
using JarLabel.Bench.Scanning;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Commands;

/// <summary><c>scan</c>: the jars behind photographed or typed codes.</summary>
internal static class ScanCommand
{
    private static readonly string[] Pictures = [".png", ".jpg", ".jpeg", ".webp", ".gif", ".bmp", ".heic", ".heif", ".avif", ".tif", ".tiff", ".pdf"];

    private static readonly Argument<string> What = new("WHAT") { Description = "A photo of labels (photo.jpg), a jar's number (142-5), or - for codes typed one a line." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("scan", "The jar behind a photographed or typed code, and whether its label is still true.") { What }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => Codes(typed.Needed<string>(What, (text, _) => text)).Then(codes =>
    {
        var found = new ScannedCodes(session, codes);
        return found.Nothing ? Result<Answer>.Failed(found.Faults)
            : codes.Count > 1 ? Several(session, found)
            : found.Jars.Count == 1 ? JarAnswer.Scanned(session.Workbench, found.Jars[0])
            : found.Bags.Count == 1 ? SupplyAnswer.Of(session.Workbench, found.Bags[0])
            : SupplyAnswer.Of(session.Workbench, found.Bottles[0]);
    });

    private static Result<IReadOnlyList<string>> Codes(string what) =>
        what == "-" ? Terminal.TypedLines() is { Count: > 0 } lines ? Result<IReadOnlyList<string>>.Of(lines) : TypingProblems.NothingTyped()
        : Pictures.Contains(Path.GetExtension(what), StringComparer.OrdinalIgnoreCase) || File.Exists(what) ? ScanJar.Photo(what).Then(found => Result<IReadOnlyList<string>>.Of(found))
        : Result<IReadOnlyList<string>>.Of([what]);

    private static Answer Several(Session session, ScannedCodes found)
    {
        var jars = found.Jars;
        Problem[] warnings =
        [
            .. found.Faults,
            .. jars.SelectMany(j => j.Jar.Cautions.Select(c => c with { Text = $"Jar {j.Jar.History.Jar.Number}: {c.Message}" })),
            .. found.Bags.SelectMany(b => b.Cautions),
            .. found.Bottles.SelectMany(b => b.Cautions),
        ];
        return Answer.Of(
            Show(session, found).Next(jars.Count > 0 ? $"jarlabel jar {jars[0].Jar.History.Jar.Number.Value}" : "jarlabel bag list"),
            new ScanAnswerJson([.. jars.Select(j => JarAnswer.Json(session.Workbench, j))], warnings)
            {
                Bags = [.. found.Bags.Select(b => BagJson.Of(b.Bag))],
                Bottles = [.. found.Bottles.Select(b => BottleJson.Of(b.Bottle))],
            },
            c => c.ScanAnswerJson,
            warnings);
    }

    private static Screen Show(Session session, ScannedCodes found)
    {
        var (jars, catalog) = (found.Jars, session.Workbench.Catalog);
        var screen = new Screen().Title(found.Title).Gap();
        if (jars.Count > 0)
        {
            screen.Table(["jar", "what it is", "state", "label", " use by (estimate)"], [.. jars.Select(j => Row(session, j))], i => StateWords.Style(State(session, jars[i])));
        }

        return screen.Rows(
        [
            .. found.Bags.Select(b => ($"bag {b.Bag.Number}", (string?)$"{BenchAmount.Both(b.Bag.Left, session.Workbench.Metric)} of {catalog.GradeOf(b.Bag.Grade).Name} flakes")),
            .. found.Bottles.Select(b => ($"bottle {b.Bottle.Number}", (string?)$"{BenchAmount.Both(b.Bottle.Left, session.Workbench.Metric)} of {catalog.SolventOf(b.Bottle.Solvent).Name}")),
        ]);
    }

    private static string[] Row(Session session, Scanned scanned)
    {
        var jar = scanned.Jar.History.Jar;
        return
        [
            jar.Number.ToString(),
            JarTitle.Of(jar, session.Workbench.Catalog),
            StateWords.Of(State(session, scanned)),
            scanned.OutOfDate ? "out of date" : scanned.Revision is null ? "" : "true",
            jar.FailedOn is { } failed ? FailureWords.On(failed) : DateWords.Of(jar.Dates.UseBy),
        ];
    }

    private static JarState State(Session session, Scanned scanned) => scanned.Jar.History.Jar.StateAt(session.Workbench.Now);
}
