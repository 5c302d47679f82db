using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say which label is wanted.</summary>
internal static class LabelOptions
{
    internal const int MostPlaces = 200;

    private static readonly Option<string> Design = new("--design") { Description = "The label design (\"jarlabel designs\" lists them).", HelpName = "id" };
    private static readonly Option<string> Sheet = new("--sheet") { Description = "The label stock (\"jarlabel sheets\" lists it).", HelpName = "id" };
    private static readonly Option<string> Start = new("--start") { Description = "The place on the sheet, from 1; else the next free one.", HelpName = "place" };

    private static readonly Option<string> Printer = new("--printer") { Description = "The printer whose calibration counts; else the one it is sent to, else what was measured without naming one.", HelpName = "name" };

    private static readonly Option<bool> Mono = new("--mono") { Description = "In pure black and white, as on thermal rolls, which are always so." };

    /// <summary>Adds them; the last is how the command names the printer.</summary>
    internal static void AddTo(Command command, Option<string>? to = null)
    {
        foreach (var option in (Option[])[Design, Sheet, Start, Printer, Mono, to ?? PrintTo.To])
        {
            command.Add(option);
        }
    }

    internal static LabelChoice Read(Typed typed) => new(typed.Text(Design), typed.Text(Sheet), typed.Value(Start, Words.WholeNumber(1, MostPlaces)))
    {
        Printer = typed.Text(Printer) ?? PrintTo.Named(typed),
        LaidOutOnly = typed.Text(Printer) is not null,
        Mono = typed.Switch(Mono),
    };

    /// <summary>The stock and design that were typed.</summary>
    internal static LabelChoice Stock(Typed typed) => new(typed.Text(Design), typed.Text(Sheet));
}
