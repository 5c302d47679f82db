namespace JarLabel.Layout;

/// <summary>The measure of type: 72 points to the inch.</summary>
internal static class TypePoint
{
    /// <summary>One point in mm.</summary>
    internal const double Millimetres = 25.4 / 72;
}
