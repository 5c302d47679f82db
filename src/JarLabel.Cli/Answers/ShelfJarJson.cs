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
    string State,
    string? Tested,
    bool? TestPassed)
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
        StateWords.Of(StateOf(jar, now)),
        jar.Tested is { } tested ? Day(tested) : null,
        jar.TestPassed);

    /// <summary>How a listed jar stands.</summary>
    internal static JarState StateOf(JarEntry jar, DateTime now) =>
        new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy).StateAt(now, jar.Tested is { } day ? new TestResult(day, jar.TestPassed == true) : null);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
