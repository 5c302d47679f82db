namespace JarLabel.Core.Jars;

/// <summary>Container materials as people write them.</summary>
public static class ContainerMaterials
{
    /// <summary>Every material by its word.</summary>
    public static IReadOnlyDictionary<string, ContainerMaterial> ByWord { get; } = new Dictionary<string, ContainerMaterial>(StringComparer.OrdinalIgnoreCase)
    {
        ["glass"] = ContainerMaterial.Glass,
        ["lined-metal"] = ContainerMaterial.LinedMetal,
        ["metal"] = ContainerMaterial.Metal,
        ["plastic"] = ContainerMaterial.Plastic,
    };

    /// <summary>The word for a material: <c>lined-metal</c>.</summary>
    public static string Word(this ContainerMaterial material) => ByWord.First(m => m.Value == material).Key;
}
