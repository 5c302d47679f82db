using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say what something is filled into.</summary>
internal sealed class ContainerOptions
{
    private readonly Option<string> container = new("--container") { Description = "What the jar holds to the brim: \"500 mL\".", HelpName = "volume" };
    private readonly Option<string> material = new("--material") { Description = "glass (the default), lined-metal, metal or plastic.", HelpName = "material" };

    internal void AddTo(Command command)
    {
        command.Add(container);
        command.Add(material);
    }

    /// <summary>The container.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="holds">What it holds where nobody said.</param>
    internal Container Read(Typed typed, Volume? holds = null) =>
        new(typed.Value(material, Words.Material) ?? ContainerMaterial.Glass, typed.Value(container, VolumeText.Read) ?? holds);

    /// <summary>The container where one was named, else null.</summary>
    internal Container? ReadIfNamed(Typed typed) => Read(typed) is { Holds: not null } named ? named : null;
}
