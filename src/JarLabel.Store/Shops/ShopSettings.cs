using JarLabel.Core.Catalog;

namespace JarLabel.Store.Shops;

/// <summary>What a shop has settled once for all. Every part has a default, so a new shop need settle nothing.</summary>
public sealed record ShopSettings
{
    /// <summary>The shop's name, as printed on labels; null prints none.</summary>
    public string? Name { get; init; }

    /// <summary>Who to ask about a jar: a telephone number, an address; one line.</summary>
    public string? Contact { get; init; }

    /// <summary>The number of the poison center to print; null for that of the rules' region.</summary>
    public string? PoisonCenter { get; init; }

    /// <summary>Where the codes on labels lead; null makes them plain text that needs no network.</summary>
    public ShopAddress? BaseUrl { get; init; }

    /// <summary>Which labelling rules apply.</summary>
    public RuleSet Rules { get; init; } = RuleSet.Osha;

    /// <summary>True shows amounts on screen in metric measure first.</summary>
    public bool Metric { get; init; }

    /// <summary>The shelves; a new jar goes on the first.</summary>
    public IReadOnlyList<Shelf> Shelves { get; init; } = [new Shelf("main", Temperature.FromDegreesCelsius(20))];

    /// <summary>The sheet of label stock to use when none is named; null for the program's own choice.</summary>
    public string? Sheet { get; init; }

    /// <summary>The label design to use when none is named; null for the program's own choice.</summary>
    public string? Design { get; init; }

    /// <summary>Printers by names of the shop's own.</summary>
    public IReadOnlyList<NamedPrinter> Printers { get; init; } = [];

    /// <summary>How many times faster a batch ages when it is 10 K warmer, 1.5 to 3, where the shop has settled it; null leaves it uncertain.</summary>
    public double? AgingPerTenKelvin { get; init; }

    /// <summary>How far the shop's own drying tests move use-by estimates.</summary>
    public LearningSettings Learning { get; init; } = LearningSettings.Usual;

    /// <summary>A shelf by its name, or the first one.</summary>
    public Result<Shelf> Shelf(string? name, string where = "shelf") =>
        name is null ? Shelves[0]
        : Shelves.FirstOrDefault(shelf => shelf.Name == name) is { } found ? found
        : ShopProblems.NoSuchShelf(name, Shelves.Select(shelf => shelf.Name), where);
}
