using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Layout.Sheets;

namespace JarLabel.Cli.Commands;

/// <summary><c>sheets</c>: the label stock there is.</summary>
internal static class SheetsCommand
{
    private static readonly Argument<string?> Id = new("ID") { Description = "One kind of stock, drawn.", Arity = ArgumentArity.ZeroOrOne };

    internal static Command Create(Runner runner) => runner.Runs(new Command("sheets", "The label stock there is, by dimensions; or one kind of it, drawn.") { Id }, Run);

    private static Result<Answer> Run(Typed typed, Session session) => typed.Text(Id) is { } id
        ? LabelPress.Open(session.Workbench).Then(press => press.Stock(id)).Then<Answer>(sheet => Drawn(sheet))
        : All(session);

    private static Answer Drawn(Sheet sheet)
    {
        var screen = new Screen().Title(sheet.Title).Gap();
        foreach (var line in SheetDrawing.Of(sheet))
        {
            screen.Text("  " + line);
        }

        return Answer.Of(screen.Next($"jarlabel label 1 --sheet {sheet.Id}"), new SheetsAnswerJson([SheetJson.Of(sheet)]), c => c.SheetsAnswerJson);
    }

    private static Result<Answer> All(Session session) => LabelPress.Open(session.Workbench).Then(press => press.Sheets()).Then<Answer>(sheets => Answer.Of(
        new Screen().Title($"{sheets.Count} kinds of stock").Gap()
            .Table(["id", "drawn", " labels", " mm wide", " mm high", "usual design"], [.. sheets.Select(Row)])
            .Next($"jarlabel label 1 --sheet {sheets[0].Id}"),
        new SheetsAnswerJson([.. sheets.Select(SheetJson.Of)]),
        c => c.SheetsAnswerJson));

    private static string[] Row(Sheet sheet) => [sheet.Id, Small(sheet), Figure(sheet.Places), Figure(sheet.Width), Figure(sheet.Height), sheet.Design];

    // One row of the sheet and how many there are.
    private static string Small(Sheet sheet) =>
        string.Concat(Enumerable.Repeat(sheet.Shape == LabelShape.Round ? "()" : "[]", sheet.Columns)) + (sheet.Rows > 1 ? string.Create(CultureInfo.InvariantCulture, $" x{sheet.Rows}") : "");

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
