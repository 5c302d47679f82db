using JarLabel.Core.Catalog;

namespace JarLabel.Store.Shops;

/// <summary>Reads and writes <c>shop.json</c>. Every member may be left out.</summary>
public static class ShopSettingsFile
{
    private const double Coldest = -20;
    private const double Warmest = 40;
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly Dictionary<string, bool> Units = new(StringComparer.Ordinal) { ["us"] = false, ["metric"] = true };

    /// <summary>The shop's settings; all defaults where there is no file.</summary>
    public static Result<ShopSettings> Read(ShopFolder folder)
    {
        try
        {
            return IsMissing(folder)
                ? new ShopSettings()
                : StrictJson.ReadObject("shop.json", StoreProblems.SettingsCode, DataFile.Read(folder.Settings), Settings);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return new ShopSettings();
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.ShopNotReachable(folder.Settings, fault.Message);
        }
    }

    /// <summary>Looks before it reads: most shops have no such file, and a fault takes longer than reading one. A folder that may not be
    /// looked into is a fault all the same.</summary>
    private static bool IsMissing(ShopFolder folder) =>
        !Directory.Exists(folder.Path) || !Directory.EnumerateFiles(folder.Path, Path.GetFileName(folder.Settings)).Any();

    /// <summary>Writes the settings in one step: the file is the old one or the new one, never half of either.</summary>
    public static Result<ShopSettings> Write(ShopFolder folder, ShopSettings settings) =>
        ShopLock.Within(folder, () => Put(folder, settings));

    /// <summary>Changes the settings as they are at this moment, and nobody else meanwhile.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="change">What they become, or why not.</param>
    public static Result<ShopSettings> Change(ShopFolder folder, Func<ShopSettings, Result<ShopSettings>> change) =>
        Change(folder, change, (_, settle) => settle());

    /// <summary>The same with something that goes along: it settles the change in its end, and the old settings stay where it could not be done.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="change">What they become, or why not.</param>
    /// <param name="along">What goes along; it is given the new settings and what settles them.</param>
    public static Result<T> Change<T>(ShopFolder folder, Func<ShopSettings, Result<ShopSettings>> change, Func<ShopSettings, Func<Result<ShopSettings>>, Result<T>> along)
        where T : notnull => ShopLock.Within(folder, () => Read(folder).Then(before => change(before).Then(changed =>
        {
            var settled = false;
            var done = along(changed, () =>
            {
                var put = Put(folder, changed);
                settled = put.Ok;
                return put;
            });
            return done.Ok || !settled ? done : Put(folder, before).Then(_ => done);
        })));

    private static Result<ShopSettings> Put(ShopFolder folder, ShopSettings settings)
    {
        try
        {
            DurableFile.Replace(folder.Settings, Written(settings));
            KeptWork.Add("the shop's settings");
            return settings;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.SettingsNotWritten(folder.Settings, DiskCause.Why(folder.Settings, fault));
        }
    }

    private static ShopSettings Settings(FieldReader fields)
    {
        var defaults = new ShopSettings();
        return new ShopSettings
        {
            Name = fields.OptionalText("name"),
            Contact = fields.OptionalText("contact"),
            BaseUrl = Address(fields),
            PoisonCenter = fields.OptionalText("poisonCenter"),
            Rules = fields.Has("rules") ? fields.Choice("rules", RuleSetWords.Choices) : defaults.Rules,
            Metric = fields.Has("units") ? fields.Choice("units", Units) : defaults.Metric,
            Shelves = fields.Has("shelves") ? Shelves(fields) : defaults.Shelves,
            Sheet = fields.OptionalText("sheet"),
            Design = fields.OptionalText("design"),
            Printers = fields.Has("printers") ? fields.List("printers", printer => new NamedPrinter(printer.Text("name"), printer.Text("uri"))) : defaults.Printers,
            AgingPerTenKelvin = Aging(fields),
            Learning = new LearningSettings(
                fields.OptionalNumber("stillGood", LearningSettings.LeastStillGood, LearningSettings.MostStillGood) ?? defaults.Learning.StillGood,
                fields.OptionalNumber("keepingSpread", LearningSettings.LeastSpread, LearningSettings.MostSpread) ?? defaults.Learning.Spread),
        };
    }

    /// <summary>A 2 alone settles nothing: every file that the program wrote before Q10 could be uncertain holds it. Beside it stands whether somebody settled it.</summary>
    private static double? Aging(FieldReader fields)
    {
        var times = fields.OptionalNumber("agingPerTenKelvin", KeepingSettings.LowestQ10, KeepingSettings.HighestQ10);
        var settled = fields.Has("agingSettled") ? fields.Flag("agingSettled") : times != Core.Keeping.Aging.Convention;
        return settled ? times : null;
    }

    private static ShopAddress? Address(FieldReader fields)
    {
        if (fields.OptionalText("baseUrl") is not { Length: > 0 } text)
        {
            return null;
        }

        if (!ShopAddress.Read(text, fields.Where).TryGet(out var address, out var problems))
        {
            fields.Refuse("baseUrl", problems[0].Text);
        }

        return address;
    }

    private static IReadOnlyList<Shelf> Shelves(FieldReader fields)
    {
        var shelves = fields.List("shelves", shelf =>
            new Shelf(shelf.Text("name"), Celsius(shelf)) { Earlier = Earlier(shelf), Since = shelf.Has("since") ? Day(shelf, "since") : null });
        foreach (var doubled in shelves.GroupBy(shelf => shelf.Name, StringComparer.Ordinal).Where(group => group.Count() > 1))
        {
            fields.Refuse("shelves", ShopProblems.DoubledShelf(doubled.Key));
        }

        if (shelves.Count == 0)
        {
            fields.Refuse("shelves", ShopProblems.NoShelf);
        }

        return shelves;
    }

    private static Temperature Celsius(FieldReader fields) => Temperature.FromDegreesCelsius(fields.Number("celsius", Coldest, Warmest));

    /// <summary>How warm the shelf was before, in the order of days.</summary>
    private static IReadOnlyList<EarlierWarmth> Earlier(FieldReader shelf) => !shelf.Has("earlier")
        ? []
        : [.. shelf.List("earlier", e => new EarlierWarmth(Day(e, "until"), Celsius(e))).OrderBy(e => e.Until)];

    private static DateOnly Day(FieldReader fields, string member)
    {
        var text = fields.Text(member);
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            fields.Refuse(member, ShopProblems.NotADay(text));
        }

        return day;
    }

    private static byte[] Written(ShopSettings settings)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Readable))
        {
            json.WriteStartObject();
            WriteMembers(json, settings);
            json.WriteEndObject();
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    private static void WriteMembers(Utf8JsonWriter json, ShopSettings settings)
    {
        WriteText(json, "name", settings.Name);
        WriteText(json, "contact", settings.Contact);
        WriteText(json, "poisonCenter", settings.PoisonCenter);
        WriteText(json, "baseUrl", settings.BaseUrl?.Text);
        json.WriteString("rules", settings.Rules.Word());
        json.WriteString("units", Units.Single(unit => unit.Value == settings.Metric).Key);
        json.WriteStartArray("shelves");
        foreach (var shelf in settings.Shelves)
        {
            json.WriteStartObject();
            json.WriteString("name", shelf.Name);
            json.WriteNumber("celsius", shelf.Temperature.DegreesCelsius);
            if (shelf.Since is { } since)
            {
                json.WriteString("since", Day(since));
            }

            WriteEarlier(json, shelf.Earlier);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteText(json, "sheet", settings.Sheet);
        WriteText(json, "design", settings.Design);
        WritePrinters(json, settings.Printers);
        if (settings.AgingPerTenKelvin is { } times)
        {
            json.WriteNumber("agingPerTenKelvin", times);
            json.WriteBoolean("agingSettled", true);
        }

        json.WriteNumber("stillGood", settings.Learning.StillGood);
        json.WriteNumber("keepingSpread", settings.Learning.Spread);
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static void WriteEarlier(Utf8JsonWriter json, IReadOnlyList<EarlierWarmth> earlier)
    {
        if (earlier.Count == 0)
        {
            return;
        }

        json.WriteStartArray("earlier");
        foreach (var before in earlier)
        {
            json.WriteStartObject();
            json.WriteString("until", Day(before.Until));
            json.WriteNumber("celsius", before.Temperature.DegreesCelsius);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePrinters(Utf8JsonWriter json, IReadOnlyList<NamedPrinter> printers)
    {
        if (printers.Count == 0)
        {
            return;
        }

        json.WriteStartArray("printers");
        foreach (var printer in printers)
        {
            json.WriteStartObject();
            json.WriteString("name", printer.Name);
            json.WriteString("uri", printer.Uri);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteText(Utf8JsonWriter json, string name, string? text)
    {
        if (text is not null)
        {
            json.WriteString(name, text);
        }
    }
}

/// <summary>A printer by the shop's own name for it.</summary>
/// <param name="Name">The name, as <c>--to</c> takes it.</param>
/// <param name="Uri">Its address.</param>
public sealed record NamedPrinter(string Name, string Uri);

/// <summary>What can be wrong with a shop's settings.</summary>
internal static class ShopProblems
{
    internal const string AddressRule = "wanted is http:// or https:// with a host and perhaps a port, and no path, such as http://192.168.1.20:5080";

    internal static Problem NotAnAddress(string read, string where) => new("JL408", $"Read \"{read}\"; {AddressRule}.", where);

    internal static Problem NoSuchShelf(string name, IEnumerable<string> known, string where) =>
        new("JL409", string.IsNullOrWhiteSpace(name)
            ? Message.Of($"Read nothing as the name of a shelf; this shop has: {string.Join(", ", known)}. For example {new InputName("shelf", known.First())}.")
            : Message.Of($"There is no shelf \"{name}\"; this shop has: {string.Join(", ", known)}.{Nearest.Asked(name, known)} A new one: {new Remedy("shop set", new InputName("setting", "shelf"), new InputName("value", $"{name}=18 C"))}"), where);

    internal static string DoubledShelf(string name) => $"The shelf \"{name}\" is there twice.";

    internal static string NotADay(string read) => $"Read \"{read}\"; wanted is a day such as 2026-06-01.";

    internal const string NoShelf = "A shop has at least one shelf.";
}
