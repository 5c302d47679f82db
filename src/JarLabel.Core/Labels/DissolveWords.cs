namespace JarLabel.Core.Labels;

/// <summary>How flakes are helped along without a fire. Common practice of the trade; a motor or a flame near alcohol vapour lights it.</summary>
public static class DissolveWords
{
    /// <summary>In one sentence, wherever dissolving is told of.</summary>
    public const string Safely = "To dissolve faster stand the jar, lid loose, in warm water away from any flame; no stove, blender, grinder or drill near alcohol.";
}
