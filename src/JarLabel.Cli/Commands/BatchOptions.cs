using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Commands;

/// <summary>The options that say what batch is wanted: a cut and one amount, or two amounts.</summary>
internal sealed class BatchOptions
{
    private readonly Option<string> cut = new("--cut") { Description = "Pounds of flakes per US gallon poured: 1.5, \"2 lb\", \"240 g/L\", \"2 oz/pt\".", HelpName = "cut" };
    private readonly Option<string> pour = new("--pour") { Description = "Alcohol to pour: \"350 mL\", \"1 1/2 pt\".", HelpName = "volume" };
    private readonly Option<string> flakes = new("--flakes") { Description = "Flakes to use: \"4 oz\", \"113 g\". With --pour the cut follows.", HelpName = "weight" };
    private readonly Option<string> makes = new("--makes") { Description = "Finished liquid wanted: \"1 pt\".", HelpName = "volume" };
    private readonly Option<string> fill = new("--fill") { Description = "A container to fill, leaving its head space: \"500 mL\".", HelpName = "volume" };
    private readonly Option<string> temperature = Temperature();

    /// <summary>The solvent's option, which other commands need too.</summary>
    internal static Option<string> Solvent() =>
        new("--solvent") { Description = "The alcohol: ethanol-95, denatured-unknown, isopropanol-99, ... or one of the shop's own.", HelpName = "id" };

    /// <summary>The bench's temperature, which other commands need too.</summary>
    internal static Option<string> Temperature() =>
        new("--temp") { Description = "Temperature at the bench: 68F, \"20 C\" (the default).", HelpName = "temperature" };

    internal void AddTo(Command command)
    {
        foreach (var option in (Option<string>[])[cut, pour, flakes, makes, fill, temperature])
        {
            command.Add(option);
        }
    }

    internal Order Read(Typed typed) => new(
        typed.Value(cut, CutText.Read),
        typed.Value(pour, VolumeText.Read),
        typed.Value(flakes, MassText.Read),
        typed.Value(makes, VolumeText.Read),
        typed.Value(fill, VolumeText.Read));

    internal UnitsNet.Temperature? ReadTemperature(Typed typed) => typed.Value(temperature, TemperatureText.Read);
}
