namespace JarLabel.Store.Index;

/// <summary>Where a page of the shelf list ended.</summary>
public readonly record struct ShelfMark(DateOnly UseBy, int Number);
