using System.Globalization;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Store.Index;

namespace JarLabel.Cli.Answers;

/// <summary>A jar in the shelf's list, for a program.</summary>
internal sealed record ShelfJarJson(
    int Number,
    string Id,
    int Revision,
    string Grade,
    string Solvent,
    string Shelf,
    double CutPoundsPerGallon,
    double VolumeMilliliters,
    string Mixed,
    string TestFrom,
    string UseBy,
    string State)
{
    internal static ShelfJarJson Of(JarEntry jar, DateTime now) => new(
        jar.Number,
        JarNumber.From(jar.Number).ToString(),
        jar.Revision,
        jar.Grade,
        jar.Solvent,
        jar.Shelf,
        jar.Cut?.PoundsPerUsGallon ?? 0,
        jar.Liquid.Milliliters,
        Day(jar.Mixed),
        Day(jar.TestFrom),
        Day(jar.UseBy),
        StateWords.Of(new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy).StateAt(now)));

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
