namespace JarLabel.Printing.Printers;

/// <summary>What a printer says of itself when asked.</summary>
public sealed class PrinterFacts
{
    private const int StoppedState = 5;
    private readonly IppGroup said;

    internal PrinterFacts(IppGroup said)
    {
        this.said = said;
        Loaded = [.. said.All("media-col-ready").Select(Size).OfType<PaperSize>(), .. Names("media-ready")];
        Sizes = [.. said.All("media-col-database").Select(Size).OfType<PaperSize>(), .. said.All("media-size-supported").Select(v => Dimensions(v.Members, null)).OfType<PaperSize>(), .. Supported()];
    }

    /// <summary>Its name, as it gives it.</summary>
    public string Name => said.Word("printer-info") ?? said.Word("printer-name") ?? said.Word("printer-make-and-model") ?? "printer";

    /// <summary>Its make and model, or null.</summary>
    public string? Model => said.Word("printer-make-and-model");

    /// <summary>Sizes of paper that are in it now.</summary>
    public IReadOnlyList<PaperSize> Loaded { get; }

    /// <summary>Sizes of paper that it takes.</summary>
    public IReadOnlyList<PaperSize> Sizes { get; }

    /// <summary>The kinds of document it takes.</summary>
    public IReadOnlyList<string> Formats => said.Words("document-format-supported");

    /// <summary>True when it takes a PDF.</summary>
    public bool TakesPdf => Formats.Contains("application/pdf");

    /// <summary>False when it says that it takes no jobs.</summary>
    public bool Accepts => said.First("printer-is-accepting-jobs")?.Flag ?? true;

    /// <summary>True when it stands still.</summary>
    public bool IsStopped => said.Number("printer-state") == StoppedState;

    /// <summary>Why it is as it is, in words; null when it says nothing.</summary>
    public string? Why => ReasonWords.Of(Reasons, IsStopped || !Accepts ? said.Word("printer-state-message") : null);

    /// <summary>True when somebody has to see to it before it prints.</summary>
    public bool Hindered => Reasons.Any(ReasonWords.Hinders);

    /// <summary>Its finest resolution, dots per inch; null when unsaid.</summary>
    public int? Dpi => said.All("printer-resolution-supported").Select(v => v.DotsPerInch).Where(d => d is not null).Select(d => (int?)Math.Min(d!.Value.Across, d.Value.Down)).Max();

    /// <summary>True when it can be told to print at actual size.</summary>
    public bool CanKeepSize => said.Words("print-scaling-supported").Contains("none");

    /// <summary>True when paper is chosen by its measures.</summary>
    public bool ChoosesByMeasures => said.Words("media-col-supported").Contains("media-size") || said.All("media-size-supported").Count > 0;

    private IReadOnlyList<string> Reasons => said.Words("printer-state-reasons");

    /// <summary>The name of paper of a size, or null.</summary>
    public string? NameOf(double width, double height) => said.Words("media-supported").FirstOrDefault(name => !name.StartsWith("custom_m", StringComparison.Ordinal)
        && MediaName.SizeOf(name) is { } size && new PaperSize((size.Width, size.Width), (size.Height, size.Height), null).Fits(width, height));

    /// <summary>True when it prints one side when told to.</summary>
    public bool KnowsSides => said.Words("sides-supported").Contains("one-sided");

    /// <summary>The edges that it cannot print on paper of a size: of the paper that is in it, else of any it knows of that size, else its least
    /// ones everywhere. Null when it says nothing.</summary>
    public PaperMargins? MarginsOf(double width, double height) =>
        Loaded.Concat(Sizes).FirstOrDefault(s => s.Margins is not null && s.Fits(width, height))?.Margins ?? Least();

    private PaperMargins? Least()
    {
        var (left, top, right, bottom) = (Lowest("media-left-margin-supported"), Lowest("media-top-margin-supported"), Lowest("media-right-margin-supported"), Lowest("media-bottom-margin-supported"));
        return left is { } l && top is { } t && right is { } r && bottom is { } b ? new PaperMargins(l, t, r, b) : null;
    }

    private double? Lowest(string name) => said.All(name).Select(v => v.Number / 100.0).Min();

    private static PaperSize? Size(IppValue value) => value.Members is { } media ? Dimensions(media.First("media-size")?.Members, Margins(media)) : null;

    private static PaperSize? Dimensions(IppGroup? size, PaperMargins? margins) =>
        size?.First("x-dimension")?.Range is { } x && size.First("y-dimension")?.Range is { } y ? new PaperSize(x, y, margins) : null;

    private static PaperMargins? Margins(IppGroup media) =>
        media.Number("media-left-margin") is { } left && media.Number("media-top-margin") is { } top
            && media.Number("media-right-margin") is { } right && media.Number("media-bottom-margin") is { } bottom
            ? new PaperMargins(left / 100.0, top / 100.0, right / 100.0, bottom / 100.0)
            : null;

    private IEnumerable<PaperSize> Names(string attribute) => said.Words(attribute)
        .Select(name => MediaName.SizeOf(name))
        .Where(size => size is not null)
        .Select(size => new PaperSize((size!.Value.Width, size.Value.Width), (size.Value.Height, size.Value.Height), null));

    /// <summary>The named sizes, and the span between the two names that say the least and the greatest of any size.</summary>
    private IEnumerable<PaperSize> Supported()
    {
        var custom = said.Words("media-supported").Where(n => n.StartsWith("custom_m", StringComparison.Ordinal)).Select(MediaName.SizeOf).Where(s => s is not null).Select(s => s!.Value).ToArray();
        return custom.Length == 2
            ? [.. Names("media-supported"), new PaperSize((custom.Min(s => s.Width), custom.Max(s => s.Width)), (custom.Min(s => s.Height), custom.Max(s => s.Height)), null)]
            : Names("media-supported");
    }
}

/// <summary>A self-describing name of paper: <c>iso_a4_210x297mm</c> (PWG 5101.1).</summary>
public static class MediaName
{
    /// <summary>The size in hundredths of a millimetre, or null when the name says none.</summary>
    public static (int Width, int Height)? SizeOf(string name)
    {
        var size = name[(name.LastIndexOf('_') + 1)..];
        var unit = size.EndsWith("mm", StringComparison.Ordinal) ? 100.0 : size.EndsWith("in", StringComparison.Ordinal) ? 2540.0 : 0;
        return unit > 0 && size[..^2].Split('x') is [var width, var height] && Read(width, unit) is { } wide && Read(height, unit) is { } high ? (wide, high) : null;
    }

    private static int? Read(string text, double unit) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is > 0 and < 5000 ? (int)Math.Round(value * unit) : null;
}

/// <summary>The edges of the paper that cannot be printed, in mm.</summary>
/// <param name="Left">On the left.</param>
/// <param name="Top">On top.</param>
/// <param name="Right">On the right.</param>
/// <param name="Bottom">At the bottom.</param>
public sealed record PaperMargins(double Left, double Top, double Right, double Bottom);
