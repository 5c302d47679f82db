namespace JarLabel.Core.Jars;

/// <summary>What a container is made of.</summary>
public enum ContainerMaterial
{
    /// <summary>Glass: sees everything, breaks.</summary>
    Glass,

    /// <summary>A metal can with an inside coating.</summary>
    LinedMetal,

    /// <summary>A bare metal can; shellac darkens in it.</summary>
    Metal,

    /// <summary>Plastic fit for alcohol.</summary>
    Plastic,
}
