using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say which label is wanted.</summary>
internal sealed class LabelOptions
{
    internal const int MostPlaces = 200;

    private readonly Option<string> design = new("--design") { Description = "The label design (\"jarlabel designs\" lists them).", HelpName = "id" };
    private readonly Option<string> sheet = new("--sheet") { Description = "The label stock (\"jarlabel sheets\" lists it).", HelpName = "id" };
    private readonly Option<string> start = new("--start") { Description = "The place on the sheet, from 1; else the next free one.", HelpName = "place" };

    private readonly Option<string> printer = new("--printer") { Description = "The printer whose calibration counts; else what was measured without naming one.", HelpName = "name" };

    internal void AddTo(Command command)
    {
        command.Add(design);
        command.Add(sheet);
        command.Add(start);
        command.Add(printer);
    }

    internal LabelChoice Read(Typed typed) => new(typed.Text(design), typed.Text(sheet), typed.Value(start, Words.WholeNumber(1, MostPlaces))) { Printer = typed.Text(printer) };
}
