namespace JarLabel.Store;

/// <summary>An event with its seal, see <see cref="Checking.EventChain"/>.</summary>
internal readonly record struct EventLink(EventRow Row, byte[] Seal);
