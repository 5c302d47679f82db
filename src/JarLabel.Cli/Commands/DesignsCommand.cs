using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Samples;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Layout.Designs;

namespace JarLabel.Cli.Commands;

/// <summary><c>designs</c>: the label designs there are.</summary>
internal static class DesignsCommand
{
    private static readonly Option<string> Out = new("--out") { Description = "Draw them all on one large page at their true size: .pdf, .png or .svg.", HelpName = "file" };
    private static readonly Option<bool> Mono = new("--mono") { Description = "In pure black and white, as a thermal printer shows them." };

    internal static Command Create(Runner runner) => runner.Runs(new Command("designs", "The label designs there are, with the smallest label each is for.") { Out, Mono, SharedOptions.Force }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var file = typed.File(Out);
        return typed.Then(() => file is null ? All(session, null) : ContactSheet.Write(session.Workbench, file, typed.Switch(Mono)).Then(drawn => All(session, drawn)));
    }

    private static Result<Answer> All(Session session, string? drawn) => LabelPress.Open(session.Workbench).Then(press => press.Designs()).Then<Answer>(designs => Answer.Of(
        Show(designs, drawn, session.Workbench.DryRun),
        new DesignsAnswerJson([.. designs.Select(d => new DesignJson(d.Id, d.Title, d.Width, d.Height))], drawn),
        c => c.DesignsAnswerJson));

    private static Screen Show(IReadOnlyList<Design> designs, string? drawn, bool dryRun)
    {
        var screen = new Screen().Title($"{designs.Count} designs").Gap()
            .Table(["id", " mm wide", " mm high", "what it is"], [.. designs.Select(Row)]);
        return (drawn is null ? screen : screen.Gap().Rows((dryRun ? "would be drawn at true size" : "drawn at true size", drawn))).Next(drawn is null ? "jarlabel designs --out designs.pdf" : $"jarlabel label 1 --design {designs[0].Id}");
    }

    private static string[] Row(Design design) => [design.Id, Figure(design.Width), Figure(design.Height), design.Title];

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
