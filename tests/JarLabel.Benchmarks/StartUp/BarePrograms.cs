using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace JarLabel.Benchmarks.StartUp;

/// <summary>Builds the bare one-label program that start-up is measured against.</summary>
internal static class BarePrograms
{
    internal static Command PublishNative()
    {
        var output = Path.Combine(Path.GetTempPath(), "jarlabel-bare-native");
        Build(["publish", Project(), "-c", "Release", "-r", RuntimeInformation.RuntimeIdentifier, "-p:PublishAot=true", "-o", output, .. Linker()]);
        return new Command("bare, native", Path.Combine(output, "Bare"), ["{dir}/label.pdf"]);
    }

    internal static Command BuildManaged()
    {
        var output = Path.Combine(Path.GetTempPath(), "jarlabel-bare-managed");
        Build(["publish", Project(), "-c", "Release", "-o", output]);
        return new Command("bare, JIT", "dotnet", [Path.Combine(output, "Bare.dll"), "{dir}/label.pdf"]);
    }

    // Native AOT looks for clang; where only gcc is installed it must be told.
    private static string[] Linker() =>
        OperatingSystem.IsLinux() && !File.Exists("/usr/bin/clang") ? ["-p:CppCompilerAndLinker=gcc", "-p:LinkerFlavor=bfd"] : [];

    private static string Project([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "Bare", "Bare.csproj"));

    private static void Build(string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException(output);
    }
}
