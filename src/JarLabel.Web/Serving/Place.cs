using JarLabel.Web.Forms;

namespace JarLabel.Web.Serving;

/// <summary>What a path names. A path is taken whole or not at all: nothing in it is ever looked up as a file.</summary>
/// <param name="Kind">Which page.</param>
/// <param name="Jar">The jar as written, <c>142-5.1</c>; empty where there is none.</param>
/// <param name="Step">The form's name, or the key of what was done; empty where there is none.</param>
internal sealed record Place(PlaceKind Kind, string Jar = "", string Step = "")
{
    private static readonly Place Nowhere = new(PlaceKind.None);

    internal static Place Of(string path) => path.Split('/') switch
    {
        ["", ""] => new Place(PlaceKind.Shelf),
        ["", "bench.js"] => new Place(PlaceKind.Script),
        ["", "pair"] => new Place(PlaceKind.Pair),
        ["", "can"] => new Place(PlaceKind.Can),
        ["", "labels", { Length: > 0 } file] => new Place(PlaceKind.LabelFile, Step: file),
        ["", "steps"] => new Place(PlaceKind.Steps),
        ["", "done", var key, "paper"] => new Place(PlaceKind.Paper, Step: key),
        ["", "done", var key] => new Place(PlaceKind.Done, Step: key),
        ["", "J" or "j", { Length: > 0 } jar] => new Place(PlaceKind.Jar, jar),
        ["", "J" or "j", { Length: > 0 } jar, "label.pdf"] => new Place(PlaceKind.LabelPdf, jar),
        ["", "J" or "j", { Length: > 0 } jar, var step] when BenchForms.OfJar.ContainsKey(step) => new Place(PlaceKind.Form, jar, step),
        ["", var step] when BenchForms.OfShop.ContainsKey(step) => new Place(PlaceKind.Form, Step: step),
        ["", var group, var step] when BenchForms.OfShop.ContainsKey($"{group}/{step}") => new Place(PlaceKind.Form, Step: $"{group}/{step}"),
        _ => Nowhere,
    };
}
