namespace JarLabel.Tests.Store;

/// <summary>Somebody else's program as a judge, or a hand at the bench in its own process.</summary>
internal static class OutsideProgram
{
    public static string Hand { get; } = Path.Combine(AppContext.BaseDirectory, "JarLabel.Hand.dll");

    public static Process StartHand(params string[] arguments) => Start(Environment.ProcessPath is { } path && path.EndsWith("dotnet", StringComparison.Ordinal) ? path : "dotnet", ["exec", Hand, .. arguments]);

    public static Process Start(string program, IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }

    /// <summary>Its exit code and all it said.</summary>
    public static (int Code, string Said) Run(string program, params string[] arguments)
    {
        using var process = Start(program, arguments);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var said = process.StandardOutput.ReadToEnd() + errors.GetAwaiter().GetResult();
        process.WaitForExit();
        return (process.ExitCode, said.Trim());
    }

    public static void Need(string program) => Assert.SkipUnless(
        Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program))),
        $"{program} is not installed.");
}
