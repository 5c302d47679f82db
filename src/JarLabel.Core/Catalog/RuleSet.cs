namespace JarLabel.Core.Catalog;

/// <summary>Whose labelling and storage rules apply.</summary>
public enum RuleSet
{
    /// <summary>US rules: 29 CFR 1910.1200 and its neighbours.</summary>
    Osha,

    /// <summary>European rules: Regulation (EC) No 1272/2008.</summary>
    Clp,
}
