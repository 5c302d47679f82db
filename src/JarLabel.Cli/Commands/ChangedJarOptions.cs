using System.CommandLine;
using JarLabel.Bench.Labels;
using JarLabel.Cli.Typing;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary>The options that thinning and thickening a jar share.</summary>
internal sealed class ChangedJarOptions
{
    private readonly Option<string> to = new("--to") { Description = "The cut wanted: 1.5, \"2 lb\", \"240 g/L\".", HelpName = "cut" };
    private readonly Option<string> temperature = BatchOptions.Temperature();
    private readonly ContainerOptions container = new();
    private readonly NewLabelOptions label = new();

    internal void AddTo(Command command)
    {
        command.Add(to);
        command.Add(temperature);
        container.AddTo(command);
        label.AddTo(command, PrintTo.BesideCut);
    }

    internal PoundCut To(Typed typed, string example) => typed.Needed(to, example, CutText.Read);

    internal Temperature? Temperature(Typed typed) => typed.Value(temperature, TemperatureText.Read);

    /// <summary>The larger jar it goes into; null when it stays in its own.</summary>
    internal Container? Container(Typed typed) => container.ReadIfNamed(typed);

    internal LabelChoice? Label(Typed typed) => label.Read(typed);
}
