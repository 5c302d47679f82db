namespace JarLabel.Operations.Answers;

/// <summary>A shop's settings for a program.</summary>
internal sealed record ShopJson(
    string Folder,
    string? Name,
    string? Contact,
    string? BaseUrl,
    string Rules,
    string Units,
    string? Sheet,
    string? Design,
    double AgingPerTenKelvin,
    double StillGood,
    double KeepingSpread,
    IReadOnlyList<ShelfSettingJson> Shelves,
    IReadOnlyList<PrinterSettingJson> Printers)
{
    /// <summary>The poison center's number as set; null where the one of the rules' region is printed.</summary>
    public string? PoisonCenter { get; init; }

    /// <summary>False where nobody has settled how ageing follows warmth; the figure is then the middle of what is thought possible.</summary>
    public bool AgingSettled { get; init; }

    /// <summary>What goes through but should be known.</summary>
    public IReadOnlyList<Problem> Warnings { get; init; } = [];

    internal static ShopJson Of(ShopFolder folder, ShopSettings settings) => new(
        folder.Path,
        settings.Name,
        settings.Contact,
        settings.BaseUrl?.Text,
        settings.Rules.ToString().ToLowerInvariant(),
        settings.Metric ? "metric" : "us",
        settings.Sheet,
        settings.Design,
        settings.AgingPerTenKelvin ?? Aging.Middle,
        settings.Learning.StillGood,
        settings.Learning.Spread,
        [.. settings.Shelves.Select(s => new ShelfSettingJson(s.Name, s.Temperature.DegreesCelsius))],
        [.. settings.Printers.Select(p => new PrinterSettingJson(p.Name, p.Uri))])
    {
        PoisonCenter = settings.PoisonCenter,
        AgingSettled = settings.AgingPerTenKelvin is not null,
    };
}

/// <summary>A printer that the shop has named.</summary>
internal sealed record PrinterSettingJson(string Name, string Uri);

/// <summary>A shelf of the shop.</summary>
internal sealed record ShelfSettingJson(string Name, double Celsius);
