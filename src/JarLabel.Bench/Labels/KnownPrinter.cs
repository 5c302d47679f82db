using JarLabel.Bench.Calibrating;
using JarLabel.Bench.Printing;
using JarLabel.Core;
using JarLabel.Store.Printers;

namespace JarLabel.Bench.Labels;

/// <summary>Whether there is a printer of the name that a label is laid out for: under a misspelled one it would lose its calibration unseen.</summary>
internal static class KnownPrinter
{
    /// <summary>The choice, when nobody named a printer for its calibration alone or that printer was measured or is known.</summary>
    internal static Result<LabelChoice> Check(Workbench bench, LabelChoice choice) => choice is { LaidOutOnly: true, Printer: { } name }
        ? CalibrationFile.Read(bench.Folder).Then<LabelChoice>(all => Check(bench, name, [.. all.Select(one => one.Printer).OfType<string>()]) is { } problem ? problem : choice)
        : choice;

    private static Problem? Check(Workbench bench, string name, IReadOnlyList<string> measured)
    {
        if (measured.Contains(name, StringComparer.OrdinalIgnoreCase) || bench.Settings.Printers.Any(printer => printer.Name == name))
        {
            return null;
        }

        // Only now is the machine asked for its queues, which takes a while.
        string[] known = [.. measured.Concat(new PrinterBook(bench, Environment.GetEnvironmentVariable).Names()).Distinct(StringComparer.OrdinalIgnoreCase)];
        return known.Contains(name, StringComparer.Ordinal) ? null : CalibrationProblems.NobodyKnows(name, known);
    }
}
