using JarLabel.Tests.Printing;

namespace JarLabel.Acceptance;

public sealed partial class ReadmeTests : IDisposable
{
    private const string PrinterInReadme = "ipp://192.168.1.30/ipp/print";

    private const string ByHand = "dotnet run -c Release --project src/JarLabel.Cli -- ";

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task The_readmes_commands_run()
    {
        using var printer = await EvePrinter.Start();
        var commands = Commands().ToArray();
        Assert.Contains(commands, c => c.StartsWith("mix ", StringComparison.Ordinal));
        foreach (var command in commands)
        {
            var run = shop.Run([.. Word().Matches(command.Replace(PrinterInReadme, printer.Uri, StringComparison.Ordinal)).Select(m => m.Value.Trim('"'))]);
            Assert.True(run.ExitCode == 0, $"{command}: {run.Errors}");
        }

        Assert.Equal(3, Directory.EnumerateFiles(printer.Spool).Count());
    }

    [Fact]
    public void The_readmes_example_output_is_what_the_program_prints()
    {
        var shown = File.ReadAllText(Path.Combine(Place.Root, "README.md")).Split("```\n").Single(part => part.StartsWith("Jar 1-9 ", StringComparison.Ordinal));
        var run = shop.Run("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--container", "500 mL", "--at", "2026-03-09T10:00");
        foreach (var line in shown.Split('\n').Where(line => line.Length > 0 && !line.Contains("...", StringComparison.Ordinal)))
        {
            Assert.Contains(line, run.Result.Split('\n').Select(l => l.TrimEnd('\r')));
        }
    }

    /// <summary>The lines that run the program, of the README's shell blocks and of the help's topics.</summary>
    private static IEnumerable<string> Commands() => ShellBlock().Matches(File.ReadAllText(Path.Combine(Place.Root, "README.md")))
        .SelectMany(block => block.Groups["lines"].Value.Split('\n'))
        .Concat(File.ReadAllLines(Path.Combine(Place.Root, "src", "JarLabel.Cli", "Help", "printing.txt")).Select(line => line.Trim()))
        .Select(line => line.StartsWith(ByHand, StringComparison.Ordinal) ? line[ByHand.Length..] : line.StartsWith("jarlabel ", StringComparison.Ordinal) ? line["jarlabel ".Length..] : "")
        .Where(line => line.Length > 0);

    [GeneratedRegex("```sh\n(?<lines>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ShellBlock();

    [GeneratedRegex("\"[^\"]*\"|[^ ]+")]
    private static partial Regex Word();
}
