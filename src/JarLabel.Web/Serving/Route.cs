namespace JarLabel.Web.Serving;

/// <summary>What a path names. A path is taken whole or not at all: nothing in it is ever looked up as a file.</summary>
/// <param name="Kind">Which page.</param>
/// <param name="Jar">The jar as written, <c>142-5.1</c>; empty where there is none.</param>
/// <param name="Step">The form's name, or the key of what was done; empty where there is none.</param>
internal sealed record Route(RouteKind Kind, string Jar = "", string Step = "")
{
    private static readonly Route Nowhere = new(RouteKind.None);

    internal static Route Of(string path) => path.Split('/') switch
    {
        ["", ""] => new Route(RouteKind.Shelf),
        ["", "bench.js"] => new Route(RouteKind.Script),
        ["", "kept.js"] => new Route(RouteKind.Keeper),
        ["", "jars.webmanifest"] => new Route(RouteKind.Manifest),
        ["", var icon] when icon.StartsWith("icon-", StringComparison.Ordinal) => new Route(RouteKind.Icon, Step: icon),
        ["", "type", var weight] => new Route(RouteKind.Type, Step: weight),
        ["", "pair"] => new Route(RouteKind.Pair),
        ["", "can"] => new Route(RouteKind.Can),
        ["", "labels", { Length: > 0 } file] => new Route(RouteKind.LabelFile, Step: file),
        ["", (ShopCopies.Backup or ShopCopies.Export) and var copy] => new Route(RouteKind.Copy, Step: copy),
        ["", "devices"] => new Route(RouteKind.Devices),
        ["", "steps"] => new Route(RouteKind.Steps),
        ["", "done", var key, "paper"] => new Route(RouteKind.Paper, Step: key),
        ["", "done", var key] => new Route(RouteKind.Done, Step: key),
        ["", "J" or "j", { Length: > 0 } jar] => new Route(RouteKind.Jar, jar),
        ["", "J" or "j", { Length: > 0 } jar, "label.pdf"] => new Route(RouteKind.LabelPdf, jar),
        ["", "J" or "j", { Length: > 0 } jar, var step] when StepForms.OfJar.ContainsKey(step) => new Route(RouteKind.Form, jar, step),
        ["", var step] when StepForms.OfShop.ContainsKey(step) => new Route(RouteKind.Form, Step: step),
        ["", var group, var step] when StepForms.OfShop.ContainsKey($"{group}/{step}") => new Route(RouteKind.Form, Step: $"{group}/{step}"),
        _ => Nowhere,
    };
}
