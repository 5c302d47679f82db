namespace JarLabel.Operations.Sheets;

/// <summary>A sheet in use with the layout of its stock.</summary>
/// <param name="InUse">Which places are used.</param>
/// <param name="Stock">How they lie; null when the layout's file is gone.</param>
public sealed record OpenSheet(SheetInUse InUse, Sheet? Stock);
