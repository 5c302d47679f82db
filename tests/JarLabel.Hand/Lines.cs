using System.Diagnostics;
using System.Reflection;
using System.Runtime.Loader;
using System.Text.Json;

namespace JarLabel.Hand;

/// <summary>Gives the program one command line after the other within one process, because starting it thousands of times takes the time that the
/// tests are to spend on the lines.</summary>
internal static class Lines
{
    /// <summary>Runs cases, each a list of command lines of which all but the first are run only when the first one went well.</summary>
    /// <param name="program">The program's assembly.</param>
    /// <param name="cases">One case a line: a JSON list of lists of words.</param>
    /// <param name="answers">Gets a line for each case: the exit code of each of its command lines.</param>
    internal static int Run(string program, string cases, string answers)
    {
        var entry = new Loaded(program).LoadFromAssemblyPath(program).EntryPoint!;
        Console.SetIn(TextReader.Null);
        using var told = new StreamWriter(answers) { AutoFlush = true };
        var number = 0;
        foreach (var text in File.ReadLines(cases))
        {
            var (since, exits) = (Stopwatch.GetTimestamp(), new List<int>());
            foreach (var line in Read(text))
            {
                Console.Error.WriteLine($"## {number}: {string.Join(' ', line)}");
                exits.Add((int)entry.Invoke(null, [line])!);
                if (exits is [not 0])
                {
                    break;
                }
            }

            told.WriteLine($"{number++} {Stopwatch.GetElapsedTime(since).TotalMilliseconds:0} {string.Join(' ', exits)}");
        }

        return 0;
    }

    private static IEnumerable<string[]> Read(string text)
    {
        using var line = JsonDocument.Parse(text);
        return [.. line.RootElement.EnumerateArray().Select(words => words.EnumerateArray().Select(word => word.GetString()!).ToArray())];
    }

    /// <summary>The program's libraries lie beside it, not beside this one.</summary>
    private sealed class Loaded(string program) : AssemblyLoadContext("program")
    {
        private readonly AssemblyDependencyResolver resolver = new(program);

        protected override Assembly? Load(AssemblyName assemblyName) =>
            resolver.ResolveAssemblyToPath(assemblyName) is { } path ? LoadFromAssemblyPath(path) : null;

        protected override nint LoadUnmanagedDll(string unmanagedDllName) =>
            resolver.ResolveUnmanagedDllToPath(unmanagedDllName) is { } path ? LoadUnmanagedDllFromPath(path) : 0;
    }
}
