using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Layout.Sheets;

namespace JarLabel.Cli.Commands;

/// <summary><c>sheets</c>: the label stock there is.</summary>
internal static class SheetsCommand
{
    internal static Command Create(Runner runner) => runner.Runs(new Command("sheets", "The label stock there is, by dimensions."), Run);

    private static Result<Answer> Run(Typed typed, Session session) => LabelPress.Open(session.Workbench).Then(press => press.Sheets()).Then<Answer>(sheets => Answer.Of(
        new Screen().Title($"{sheets.Count} kinds of stock").Gap()
            .Table(["id", " labels", " mm wide", " mm high", "usual design"], [.. sheets.Select(Row)])
            .Next($"jarlabel label 1 --sheet {sheets[0].Id}"),
        new SheetsAnswerJson([.. sheets.Select(SheetJson.Of)]),
        AnswerContext.Default.SheetsAnswerJson));

    private static string[] Row(Sheet sheet) => [sheet.Id, Figure(sheet.Places), Figure(sheet.Width), Figure(sheet.Height), sheet.Design];

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
