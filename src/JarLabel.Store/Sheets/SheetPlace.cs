namespace JarLabel.Store.Sheets;

/// <summary>One place on one sheet.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Place">The place on it, from 1 in reading order.</param>
public readonly record struct SheetPlace(int Sheet, int Place);
