using JarLabel.Core;

namespace JarLabel.Store.Printers;

/// <summary>What can be wrong with what is kept of printers.</summary>
internal static class PrinterProblems
{
    /// <summary>The code of every fault inside <c>calibration.json</c>.</summary>
    internal const string FileCode = "JL423";

    internal static string NotADay(string read) => $"Read {Quoted.Of(read)} as the day it was measured; write it as 2026-03-09.";
}
