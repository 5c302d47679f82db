namespace JarLabel.Core.Catalog;

/// <summary>What brings a mixture into a class: the general concentration limits of the rules, percent by weight.</summary>
/// <param name="Adds">True where the shares of such ingredients add up, each over its limit; else each ingredient stands alone.</param>
/// <param name="CountsFrom">Where shares add up: an ingredient below this is left out (CLP Annex I table 1.1).</param>
/// <param name="Of">The limits, one for each class an ingredient may have.</param>
/// <param name="Source">Where they were printed.</param>
public sealed record ClassLimits(bool Adds, decimal CountsFrom, IReadOnlyList<ClassLimit> Of, string Source)
{
    /// <summary>From what share of ingredients of a class the mixture is in this one; null where the rules know no such limit.</summary>
    public decimal? For(string ingredientClass, RuleSet rules) => Of.FirstOrDefault(l => l.Class == ingredientClass)?.Under(rules);

    internal static ClassLimits Read(FieldReader fields)
    {
        var adds = fields.OptionalFlag("adds");
        return new(adds, adds ? fields.Exact("countsFrom", 0, 100) : 0, fields.List("of", ClassLimit.Read), fields.Text("source"));
    }
}

/// <summary>The limit for ingredients of one class.</summary>
/// <param name="Class">The ingredient's class.</param>
/// <param name="Clp">Percent by weight under European rules; null where they have none.</param>
/// <param name="Osha">Percent by weight under US rules; null where they have none.</param>
public sealed record ClassLimit(string Class, decimal? Clp, decimal? Osha)
{
    /// <summary>The limit under a rule set.</summary>
    public decimal? Under(RuleSet rules) => rules == RuleSet.Clp ? Clp : Osha;

    internal static ClassLimit Read(FieldReader fields)
    {
        var limit = new ClassLimit(fields.Text("class"), Percent(fields, "clp"), Percent(fields, "osha"));
        if (limit is { Clp: null, Osha: null })
        {
            fields.Refuse("clp", "A limit needs \"clp\", \"osha\" or both, percent by weight from 0.001 to 100, such as \"clp\": 1.");
        }

        return limit;
    }

    private static decimal? Percent(FieldReader fields, string name) => fields.Has(name) ? fields.Exact(name, 0.001m, 100) : null;
}
