using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>All that the printed words of one jar are made from.</summary>
/// <param name="Jar">The jar now.</param>
/// <param name="History">What happened to it, in order.</param>
/// <param name="Hazards">What its contents are under the rules that apply.</param>
/// <param name="Catalog">Names of grades and solvents, phrases.</param>
/// <param name="ShopName">The shop, or null.</param>
/// <param name="Contact">Whom to ask, or null.</param>
/// <param name="BaseUrl">Where codes lead, or null for codes that need no network.</param>
public sealed record LabelFacts(
    Jar Jar,
    IReadOnlyList<JarEvent> History,
    HazardAssessment Hazards,
    ShopCatalog Catalog,
    string? ShopName,
    string? Contact,
    string? BaseUrl)
{
    /// <summary>The poison center's number as the shop set it; null for that of the rules' region.</summary>
    public string? PoisonCenter { get; init; }
}
