using JarLabel.Layout.Marks;
using JarLabel.Layout.Symbols;

namespace JarLabel.Web.Pages;

/// <summary>The project's own hazard pictograms, drawn inside the page.</summary>
internal static class Pictograms
{
    internal static Markup Of(IEnumerable<string> codes) => Html.All(codes.Select(Symbol.Find).OfType<Symbol>().Select(One));

    private static Markup One(Symbol symbol) => Html.Of(
        $"""<svg viewBox="0 0 100 100" role="img" aria-label="{symbol.Code}: {symbol.Title}">{symbol.Layers.Select(Layer)}</svg>""");

    private static Markup Layer(SymbolLayer layer) => Html.Of($"""<path fill-rule="evenodd" fill="{Color(layer.Ink)}" d="{layer.Data}"/>""");

    private static string Color(Ink ink) => ink switch
    {
        Ink.White => "#fff",
        Ink.Red => "#d00",
        Ink.Black => "#000",
        Ink.Orange => "#f80",
        Ink.Yellow => "#fc0",
        Ink.Blue => "#05a",
        _ => "#084",
    };
}
