namespace JarLabel.Operations.Typing;

/// <summary>Readers for what somebody measures on paper.</summary>
public static class MeasureWords
{
    private const double Longest = 1000;

    /// <summary>A shift: <c>0.8</c>, <c>-0,5</c>, <c>0.8 mm</c>.</summary>
    public static Result<double> Millimeters(string text, string where)
    {
        var figure = text.Trim().EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? text.Trim()[..^2] : text;
        return TryFigure(figure, out var value) && Math.Abs(value) <= Longest ? value : MeasureProblems.NotMillimeters(text, where);
    }

    /// <summary>A scale: <c>199/200</c> as measured over true, <c>0.995</c>, <c>99.5%</c>.</summary>
    public static Result<double> Scale(string text, string where)
    {
        var parts = text.Split('/');
        if (parts.Length == 2 && TryFigure(parts[0], out var measured) && TryFigure(parts[1], out var length) && length > 0)
        {
            return Positive(measured / length, text, where);
        }

        var percent = text.Trim().EndsWith('%');
        return parts.Length == 1 && TryFigure(text.Trim().TrimEnd('%'), out var value) ? Positive(percent ? value / 100 : value, text, where) : MeasureProblems.NotAScale(text, where);
    }

    private static Result<double> Positive(double scale, string text, string where) => scale is > 0 and <= Longest ? scale : MeasureProblems.NotAScale(text, where);

    private static bool TryFigure(string text, out double value) => double.TryParse(
        text.Trim().Replace(',', '.'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value);
}

/// <summary>What can be wrong with a measure that was typed.</summary>
internal static class MeasureProblems
{
    internal static Problem NotMillimeters(string read, string where) =>
        new("JL354", $"Read {Quoted.Of(read)} as a shift; write millimetres, minus for left and up, such as 0.8 or -0.5.", where);

    internal static Problem NotAScale(string read, string where) =>
        new("JL355", $"Read {Quoted.Of(read)} as a scale; write what you measured over what the ruler says, such as 199/200, or 0.995.", where);
}
