namespace JarLabel.Core.Catalog;

/// <summary>A hazard or precautionary statement, or several that are said together. Standard texts; US rules spell "vapor".</summary>
/// <param name="Id">Its code: <c>H225</c>, <c>P301+P310</c>.</param>
/// <param name="Clp">Text under European rules.</param>
/// <param name="Osha">Text under US rules.</param>
/// <param name="Source">Where the text comes from.</param>
public sealed record Phrase(string Id, string Clp, string Osha, string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>Codes that need not be said beside this one, which says more.</summary>
    public IReadOnlyList<string> Outranks { get; init; } = [];

    /// <summary>The text under a rule set.</summary>
    public string Text(RuleSet rules) => rules == RuleSet.Osha ? Osha : Clp;

    /// <summary>Stands in a text for the names of the ingredients it is said of.</summary>
    internal const string Substances = "{substances}";

    internal static Phrase Read(FieldReader fields)
    {
        var text = fields.Text("text");
        return new(fields.Text("id"), text, fields.OptionalText("osha") ?? text, fields.Text("source"))
        {
            Outranks = fields.OptionalTexts("outranks"),
        };
    }
}
