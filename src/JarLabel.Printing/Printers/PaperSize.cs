namespace JarLabel.Printing.Printers;

/// <summary>A size of paper that a printer takes, in hundredths of a millimetre, with the edges it cannot print where it says so.</summary>
/// <param name="Width">Least and greatest width.</param>
/// <param name="Height">Least and greatest height.</param>
/// <param name="Margins">Left, top, right, bottom; null when unsaid.</param>
public sealed record PaperSize((int Low, int High) Width, (int Low, int High) Height, PaperMargins? Margins)
{
    /// <summary>Half a millimetre: paper sizes in inches and in rounded millimetres are the same paper.</summary>
    private const int Same = 50;

    /// <summary>True when paper of this size, in mm, is meant.</summary>
    public bool Fits(double width, double height) => Within(Width, width) && Within(Height, height);

    /// <summary>The printer's own figure for a length, in hundredths: what it says exactly, else ours.</summary>
    public static int Named((int Low, int High) range, double millimeters)
    {
        var ours = Hundredths(millimeters);
        return range.Low == range.High ? range.Low : Math.Clamp(ours, range.Low, range.High);
    }

    /// <summary>The size for a person.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Words(Width)} x {Words(Height)} mm");

    private static int Hundredths(double millimeters) => (int)Math.Round(millimeters * 100);

    private static bool Within((int Low, int High) range, double millimeters) =>
        Hundredths(millimeters) >= range.Low - Same && Hundredths(millimeters) <= range.High + Same;

    private static string Words((int Low, int High) range) => range.Low == range.High
        ? string.Create(CultureInfo.InvariantCulture, $"{range.Low / 100.0:0.#}")
        : string.Create(CultureInfo.InvariantCulture, $"{range.Low / 100.0:0.#}-{range.High / 100.0:0.#}");
}
