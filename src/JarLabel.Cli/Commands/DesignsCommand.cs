using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Layout.Designs;

namespace JarLabel.Cli.Commands;

/// <summary><c>designs</c>: the label designs there are.</summary>
internal static class DesignsCommand
{
    internal static Command Create(Runner runner) => runner.Runs(new Command("designs", "The label designs there are, with the smallest label each is for."), Run);

    private static Result<Answer> Run(Typed typed, Session session) => LabelPress.Open(session.Workbench).Then(press => press.Designs()).Then<Answer>(designs => Answer.Of(
        new Screen().Title($"{designs.Count} designs").Gap()
            .Table(["id", " mm wide", " mm high", "what it is"], [.. designs.Select(Row)])
            .Next($"jarlabel label 1 --design {designs[0].Id}"),
        new DesignsAnswerJson([.. designs.Select(d => new DesignJson(d.Id, d.Title, d.Width, d.Height))]),
        AnswerContext.Default.DesignsAnswerJson));

    private static string[] Row(Design design) => [design.Id, Figure(design.Width), Figure(design.Height), design.Title];

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
