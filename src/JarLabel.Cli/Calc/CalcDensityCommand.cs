using System.CommandLine;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Keeping;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc density</c>: what alcohol of a strength weighs at a temperature.</summary>
internal static class CalcDensityCommand
{
    private static readonly Option<string> Solvent = new("--solvent") { Description = "ethanol.", HelpName = "id" };
    private static readonly Option<string> Strength = new("--strength") { Description = "Percent by volume at 20 C, 0 to 100.", HelpName = "percent" };
    private static readonly Option<string> Temperature = new("--temp") { Description = "Temperature: 68F, \"20 C\" (the default).", HelpName = "temperature" };

    internal static Command Create(Runner runner) => runner.Runs(new Command("density", "Density of ethanol and water by the international formula.") { Solvent, Strength, Temperature }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        typed.Needed(Solvent, "ethanol", Ethanol);
        var strength = typed.Needed(Strength, "95", Words.Number(0, 100, 95));
        var temperature = typed.Value(Temperature, TemperatureText.Read) ?? Warmth.Reference;
        return typed.Then<Answer>(() =>
        {
            var fraction = EthanolWater.MassFraction(strength);
            var density = EthanolWater.DensityAt(fraction, temperature);
            var expansion = EthanolWater.ExpansionPerKelvin(fraction, temperature);
            return Answer.Of(
                new Screen().Title($"Ethanol {strength:0.##} % by volume at {temperature.DegreesCelsius:0.#} °C ({temperature.DegreesFahrenheit:0.#} °F)").Gap().Rows(
                    ("density", $"{density.KilogramsPerCubicMeter:0.00} kg/m³ ({density.PoundsPerUSGallon:0.000} lb/gal)"),
                    ("grows", $"{100 * expansion:0.000} % per °C")),
                new DensityAnswerJson(density.KilogramsPerCubicMeter, density.PoundsPerUSGallon, expansion),
                c => c.DensityAnswerJson);
        });
    }

    private static Result<string> Ethanol(string text, string where) =>
        text.Trim() is "ethanol" ? "ethanol" : TypingProblems.NotAChoice(text, where, ["ethanol"]);
}
