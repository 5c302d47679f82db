namespace JarLabel.Core.Catalog;

/// <summary>The most of a flammable liquid that may stand somewhere, and the rule that says so.</summary>
/// <param name="Id">Our name.</param>
/// <param name="OnlyUnder">The rule set whose region it holds in.</param>
/// <param name="Scope">What is counted.</param>
/// <param name="Materials">Container materials it is about, as commands write them; empty for any.</param>
/// <param name="Categories">Flammable-liquid categories it is about.</param>
/// <param name="Liters">The limit by volume, or null.</param>
/// <param name="Kilograms">The limit by weight, or null.</param>
/// <param name="Amount">The limit as the rule prints it: <c>1 US quart</c>.</param>
/// <param name="Rule">The rule's name and paragraph, as printed on a notice.</param>
/// <param name="Says">One sentence for a notice.</param>
/// <param name="Source">Where it was read.</param>
public sealed record StorageLimit(
    string Id,
    RuleSet OnlyUnder,
    StorageScope Scope,
    IReadOnlyList<string> Materials,
    IReadOnlyList<int> Categories,
    decimal? Liters,
    decimal? Kilograms,
    string Amount,
    string Rule,
    string Says,
    string Source)
    : CatalogRow(Id, Source)
{
    private static readonly Dictionary<string, StorageScope> Scopes = new(StringComparer.Ordinal)
    {
        ["container"] = StorageScope.Container,
        ["outsideCabinet"] = StorageScope.OutsideCabinet,
        ["cabinet"] = StorageScope.Cabinet,
    };

    internal static StorageLimit Read(FieldReader fields) => new(
        fields.Text("id"),
        fields.Choice("rules", RuleSetWords.Choices),
        fields.Choice("scope", Scopes),
        fields.OptionalTexts("materials"),
        fields.List("categories", c => c.Count("category", 1, 4)),
        fields.Has("liters") ? fields.Exact("liters", 0.001m, 1_000_000) : null,
        fields.Has("kilograms") ? fields.Exact("kilograms", 0.001m, 1_000_000) : null,
        fields.Text("amount"),
        fields.Text("rule"),
        fields.Text("says"),
        fields.Text("source"));
}

/// <summary>What a storage limit is counted over.</summary>
public enum StorageScope
{
    /// <summary>One container.</summary>
    Container,

    /// <summary>Everything that stands in one room outside a flammables cabinet.</summary>
    OutsideCabinet,

    /// <summary>Everything inside one flammables cabinet.</summary>
    Cabinet,
}
