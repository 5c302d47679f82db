namespace JarLabel.Core.Quantities;

/// <summary>What a unit word measures.</summary>
internal enum UnitKind
{
    /// <summary>Size in millilitres.</summary>
    Volume,

    /// <summary>Size in millilitres, of the air in a room.</summary>
    Room,

    /// <summary>Size in grams.</summary>
    Mass,

    /// <summary>Size in square centimetres.</summary>
    Area,

    /// <summary>Size in seconds.</summary>
    Time,
}
