using System.CommandLine;

namespace JarLabel.Cli.Commands;

/// <summary>The jar that a command is about.</summary>
internal static class JarArgument
{
    internal static Argument<string> One() => new("JAR") { Description = "The jar: 142 or 142-5." };
}
