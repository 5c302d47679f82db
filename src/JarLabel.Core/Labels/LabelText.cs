namespace JarLabel.Core.Labels;

/// <summary>Every printed string of one label, card or notice, with no place and no size yet. A design names what it shows by the
/// keys below; what has no key here cannot be printed.</summary>
/// <param name="Words">Single wordings. Each has alternatives, the most telling first; layout takes the first that fits.</param>
/// <param name="Lists">Sentences in order of importance, such as the hazard statements.</param>
/// <param name="Tables">Rows of cells, such as dates or the thinning table. Rows stand in order of importance.</param>
/// <param name="Pictograms">GHS symbol codes such as <c>GHS02</c>, ascending; on a notice, sign codes such as <c>P003</c>.</param>
/// <param name="Tone">How dark the grade is; null where there is no grade.</param>
/// <param name="Code">The payload of the QR; null where there is none.</param>
public sealed record LabelText(
    IReadOnlyDictionary<string, IReadOnlyList<string>> Words,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Lists,
    IReadOnlyDictionary<string, IReadOnlyList<IReadOnlyList<string>>> Tables,
    IReadOnlyList<string> Pictograms,
    Tone? Tone,
    string? Code);
