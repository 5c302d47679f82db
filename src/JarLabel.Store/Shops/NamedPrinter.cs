namespace JarLabel.Store.Shops;

/// <summary>A printer by the shop's own name for it.</summary>
/// <param name="Name">The name, as <c>--to</c> takes it.</param>
/// <param name="Uri">Its address.</param>
public sealed record NamedPrinter(string Name, string Uri);
