namespace JarLabel.Tests.Store;

/// <summary>The calls by which a program changes something on the disk, as <c>strace</c> tells them and as it kills at one of them.</summary>
internal static partial class WritePoints
{
    /// <summary>What a program killed by SIGKILL ends with.</summary>
    internal const int Killed = 128 + 9;

    private static readonly string[] Calls = ["pwrite64", "write", "fsync", "fdatasync", "ftruncate", "rename", "renameat2", "link", "unlink", "mkdir"];

    /// <summary>True where <c>JARLABEL_WRITE_POINTS</c> asks for every point.</summary>
    internal static bool All => Environment.GetEnvironmentVariable("JARLABEL_WRITE_POINTS") == "all";

    /// <summary>Options with which strace lists them in a file.</summary>
    internal static string[] Listed(string log) => ["-f", "-qq", "-y", "-o", log, "-e", "trace=" + string.Join(',', Calls)];

    /// <summary>Options with which strace kills the program as a thread of it enters a call for the Nth time.</summary>
    internal static string[] KilledAt(string call, int count) =>
        ["-f", "-qq", "-o", "/dev/null", "-e", "trace=" + call, "-e", string.Create(CultureInfo.InvariantCulture, $"inject={call}:signal=KILL:when={count}")];

    /// <summary>Those listed that the writing thread made in a folder, by call and by how many times it has made that call.</summary>
    internal static List<(string Call, int Count)> In(IEnumerable<string> lines, string folder)
    {
        var made = lines.Select(line => (Call: CallLine().Match(line), Here: line.Contains(folder, StringComparison.Ordinal))).Where(m => m.Call.Success).ToList();
        var writer = made.Where(m => m.Here).GroupBy(m => m.Call.Groups[1].Value).MaxBy(g => g.Count())!.Key;
        return [.. made.Where(m => m.Call.Groups[1].Value == writer)
            .GroupBy(m => m.Call.Groups[2].Value)
            .SelectMany(g => g.Select((m, i) => (m.Here, Point: (g.Key, i + 1))).Where(p => p.Here).Select(p => p.Point))];
    }

    [GeneratedRegex(@"^(\d+) +(\w+)\(")]
    private static partial Regex CallLine();
}
