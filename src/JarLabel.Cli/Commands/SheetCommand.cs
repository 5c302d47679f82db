using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Sheets;
using JarLabel.Cli.Typing;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary><c>sheet</c>: the sheets of label stock that are in use.</summary>
internal static class SheetCommand
{
    private const int Most = 1_000_000;

    private static readonly Argument<string?> Stock = new("ID") { Description = "The label stock; else the shop's usual one.", Arity = ArgumentArity.ZeroOrOne };
    private static readonly Argument<string> Number = new("SHEET") { Description = "The sheet's number, as \"sheet state\" shows it." };
    private static readonly Argument<string[]> Places = new("PLACE") { Description = "The places whose labels jammed or were never printed.", Arity = ArgumentArity.OneOrMore };

    internal static Command Create(Runner runner) => new("sheet", "The sheets of label stock in use: their free places.")
    {
        runner.Runs(new Command("new", "Begin a new sheet; the open one of that stock is put away.") { Stock }, Begin),
        runner.Runs(new Command("state", "The open sheets with their free and used places."), State),
        runner.Runs(new Command("back", "Give places back whose labels jammed: sheet back 3 5 6") { Number, Places }, TakeBack),
    };

    private static Result<Answer> Begin(Typed typed, Session session) => SheetsInUse.Begin(session.Workbench, typed.Text(Stock)).Then<Answer>(sheet => Show([sheet]));

    private static Result<Answer> State(Typed typed, Session session) => SheetsInUse.State(session.Workbench).Then<Answer>(sheets => Show(sheets));

    private static Result<Answer> TakeBack(Typed typed, Session session)
    {
        var number = typed.Needed(Number, Words.WholeNumber(1, Most));
        var places = new List<int>();
        foreach (var text in typed.Texts(Places))
        {
            if (typed.Take(Words.WholeNumber(1, JarLabel.Bench.Steps.Shared.MostPlaces)(text, Places.Name), out var place))
            {
                places.Add(place);
            }
        }

        return typed.Then(() => SheetsInUse.TakeBack(session.Workbench, number, places).Then<Answer>(sheet => Show([sheet])));
    }

    private static Answer Show(IReadOnlyList<OpenSheet> sheets)
    {
        var screen = sheets.Count == 0 ? new Screen().Title("No sheet is open; the first label opens one.") : new Screen();
        foreach (var sheet in sheets)
        {
            Draw(screen, sheet);
        }

        return Answer.Of(screen.Next("jarlabel label 1"), new SheetsInUseJson([.. sheets.Select(s => SheetInUseJson.Of(s.InUse))]), c => c.SheetsInUseJson);
    }

    /// <summary>A small picture: each free place by its number, a used one as a cross.</summary>
    private static void Draw(Screen screen, OpenSheet sheet)
    {
        var (used, columns) = (sheet.InUse, sheet.Stock?.Columns ?? 1);
        if (screen.Blocks.Count > 0)
        {
            screen.Gap();
        }

        screen.Title(string.Create(CultureInfo.InvariantCulture, $"Sheet {used.Number} of {used.Stock}: {used.Free.Count()} of {used.Places} places free")).Gap();
        foreach (var row in Enumerable.Range(1, used.Places).Chunk(columns))
        {
            screen.Text("  " + string.Concat(row.Select(place => "[" + Sign(used.Taken.Contains(place), place) + "]")));
        }
    }

    private static string Sign(bool taken, int place) => (taken ? "x" : place.ToString(CultureInfo.InvariantCulture)).PadLeft(3);
}
