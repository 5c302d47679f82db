namespace JarLabel.Core.Catalog;

/// <summary>How a poison gets in.</summary>
public enum Route
{
    /// <summary>Swallowed; mg per kg of body weight.</summary>
    Oral,

    /// <summary>Through the skin; mg per kg of body weight.</summary>
    Dermal,

    /// <summary>Breathed as vapour for four hours; mg per litre of air.</summary>
    Vapor,
}
