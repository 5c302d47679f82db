namespace JarLabel.Tests;

/// <summary>Says which outside source a check stands on. <paramref name="id"/> is a member of <see cref="References"/>.</summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class, AllowMultiple = true)]
public sealed class CitesAttribute(string id, string place) : Attribute
{
    public string Id { get; } = id;

    public string Place { get; } = place;
}
