namespace JarLabel.Core.Quantities;

/// <summary>Reads a temperature: <c>68F</c>, <c>20 C</c>, <c>20 °C</c>, <c>-5 C</c>.</summary>
public static class TemperatureText
{
    private const double ColdestCelsius = -20, WarmestCelsius = 40;

    /// <summary>From -20 °C to 40 °C, which is as far as the density formula for alcohol reaches.</summary>
    public static Result<Temperature> Read(string text, string where)
    {
        var written = text.Trim();
        var below = written.StartsWith('-') || written.StartsWith('\u2212');
        if (NumberText.Take(below ? written[1..] : written) is not { } number)
        {
            return QuantityProblems.NotATemperature(text, where);
        }

        var degrees = below ? -number.Value : number.Value;
        Temperature? read = number.After.Trim().TrimStart('°').Trim().ToUpperInvariant() switch
        {
            "F" => Temperature.FromDegreesFahrenheit(degrees),
            "C" => Temperature.FromDegreesCelsius(degrees),
            _ => null,
        };
        return read switch
        {
            null => QuantityProblems.NotATemperature(text, where),
            { DegreesCelsius: >= ColdestCelsius and <= WarmestCelsius } t => t,
            _ => QuantityProblems.TemperatureOutOfRange(text, where),
        };
    }
}
