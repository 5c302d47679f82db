namespace JarLabel.Core.Quantities;

/// <summary>Reads a cut: <c>2</c>, <c>2 lb</c>, <c>2-lb</c>, <c>1½</c>, <c>240 g/L</c>, <c>2 oz/pt</c>, or any weight in any volume of
/// solvent poured (<c>2 lb in 3 gal</c>).</summary>
public static partial class CutText
{
    /// <summary>A cut from 0.01 to 12 lb; otherwise a problem that says what was read and what is allowed.</summary>
    public static Result<PoundCut> Read(string text, string where)
    {
        var written = text.Trim();
        if (SplitRatio(written) is not var (flakes, pour))
        {
            return FromPounds(written, text, where);
        }

        var ratio = MassText.ReadPart(flakes, where).Then(m => VolumeText.ReadPart(pour, where).Then(v => FromRatio(m, v, text, where)));
        return ratio.Ok ? ratio : Result<PoundCut>.Failed([.. ratio.Problems.Select(p => QuantityProblems.InCut(text, p))]);
    }

    private static (string Flakes, string Pour)? SplitRatio(string written)
    {
        var match = Ratio().Match(written);
        if (!match.Success)
        {
            return null;
        }

        var pour = match.Groups["pour"].Value;
        return (match.Groups["flakes"].Value, NumberText.Take(pour) is null ? "1 " + pour : pour);
    }

    private static Result<PoundCut> FromRatio(Mass flakes, Volume pour, string text, string where) =>
        PoundCut.Of(flakes, pour) is { } cut ? cut : QuantityProblems.CutOutOfRange(text, flakes.Pounds / pour.UsGallons, where);

    private static Result<PoundCut> FromPounds(string written, string text, string where)
    {
        if (NumberText.Take(written) is not { } number || !PoundWord().IsMatch(number.After))
        {
            return QuantityProblems.NotACut(text, where);
        }

        return number.Value is >= PoundCut.Weakest and <= PoundCut.Strongest
            ? PoundCut.FromPoundsPerUsGallon(number.Value)
            : QuantityProblems.CutOutOfRange(text, number.Value, where);
    }

    [GeneratedRegex(@"^(?<flakes>.*\p{L}\.?)\s*(?:/|\bper\b|\bin\b)\s*(?<pour>.+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Ratio();

    [GeneratedRegex(@"^[\s-]*(?:(?:lbs?|pounds?|#)\.?)?(?:[\s-]*cut)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex PoundWord();
}
