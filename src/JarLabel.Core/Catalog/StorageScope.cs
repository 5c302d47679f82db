namespace JarLabel.Core.Catalog;

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
