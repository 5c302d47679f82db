using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Scanning;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Labels;

namespace JarLabel.Cli.Commands;

/// <summary><c>scan</c>: the jars behind photographed or typed codes.</summary>
internal static class ScanCommand
{
    private static readonly string[] Pictures = [".png", ".jpg", ".jpeg", ".webp", ".gif", ".bmp"];

    private static readonly Argument<string> What = new("WHAT") { Description = "A photo of labels (photo.jpg), a jar's number (142-5), or - for codes typed one a line." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("scan", "The jar behind a photographed or typed code, and whether its label is still true.") { What }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => Codes(typed.Needed<string>(What, (text, _) => text)).Then(codes =>
    {
        var found = codes.Select(code => ScanJar.Find(session.Workbench, code)).ToArray();
        Scanned[] jars = [.. found.Where(f => f.Ok).Select(f => f.Require())];
        Problem[] faults = [.. found.SelectMany(f => f.Problems)];
        return jars.Length == 0 ? Result<Answer>.Failed(faults)
            : codes.Count == 1 ? JarAnswer.Scanned(session, jars[0])
            : Several(session, jars, faults);
    });

    private static Result<IReadOnlyList<string>> Codes(string what) =>
        what == "-" ? Terminal.TypedLines() is { Count: > 0 } lines ? Result<IReadOnlyList<string>>.Of(lines) : TypingProblems.NothingTyped()
        : Pictures.Contains(Path.GetExtension(what), StringComparer.OrdinalIgnoreCase) || File.Exists(what) ? ScanJar.Photo(what).Then(found => Result<IReadOnlyList<string>>.Of(found))
        : Result<IReadOnlyList<string>>.Of([what]);

    private static Answer Several(Session session, Scanned[] jars, Problem[] faults)
    {
        Problem[] warnings = [.. faults, .. jars.SelectMany(j => j.Jar.Cautions.Select(c => c with { Message = $"Jar {j.Jar.History.Jar.Number}: {c.Message}" }))];
        return Answer.Of(
            new Screen().Title(string.Create(CultureInfo.InvariantCulture, $"{jars.Length} jars")).Gap()
                .Table(["jar", "what it is", "state", "label", " use by (estimate)"], [.. jars.Select(j => Row(session, j))], i => StateWords.Style(State(session, jars[i])))
                .Next($"jarlabel jar {jars[0].Jar.History.Jar.Number.Value}"),
            new ScanAnswerJson([.. jars.Select(j => JarAnswer.Json(session, j))], warnings),
            AnswerContext.Default.ScanAnswerJson,
            warnings);
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
            DateWords.Of(jar.Dates.UseBy),
        ];
    }

    private static JarState State(Session session, Scanned scanned) => scanned.Jar.History.Jar.StateAt(session.Workbench.Now);
}
