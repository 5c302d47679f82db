namespace JarLabel.Store.Printers;

/// <summary>Reads and writes <c>calibration.json</c>: what was measured, one entry a printer and sheet.</summary>
public static class CalibrationFile
{
    private const string Name = "calibration.json";
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>All that was measured; nothing where there is no file.</summary>
    public static Result<IReadOnlyList<Calibration>> Read(ShopFolder folder)
    {
        var path = folder.Calibrations;
        try
        {
            return File.Exists(path) ? StrictJson.ReadList(Name, PrinterProblems.FileCode, DataFile.Read(path), One) : Result<IReadOnlyList<Calibration>>.Of([]);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.ShopNotReachable(path, fault.Message);
        }
    }

    /// <summary>What holds for a printer and a sheet: measured for that printer, else for any; null when neither was.</summary>
    public static Result<Found> Find(ShopFolder folder, string? printer, string sheet) => Read(folder).Then<Found>(all =>
    {
        var ofSheet = all.Where(one => one.Sheet == sheet).ToList();
        return new Found(ofSheet.FirstOrDefault(one => printer is not null && IsSame(one.Printer, printer)) ?? ofSheet.FirstOrDefault(one => one.Printer is null));
    });

    /// <summary>Keeps what was measured in place of what was before, in one step.</summary>
    public static Result<Calibration> Keep(ShopFolder folder, Calibration measured) =>
        Change(folder, measured.Printer, measured.Sheet, measured).Then<Calibration>(_ => measured);

    /// <summary>Forgets what was measured; false when there was nothing.</summary>
    public static Result<bool> Forget(ShopFolder folder, string? printer, string sheet) => Change(folder, printer, sheet, null);

    private static Result<bool> Change(ShopFolder folder, string? printer, string sheet, Calibration? put) => ShopLock.Within(folder, () => Read(folder).Then<bool>(all =>
    {
        Calibration[] others = [.. all.Where(one => one.Sheet != sheet || !IsSame(one.Printer, printer))];
        try
        {
            DurableFile.Replace(folder.Calibrations, Written(put is null ? others : [.. others, put]));
            KeptWork.Add("what was measured of printers");
            return others.Length < all.Count;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.SettingsNotWritten(folder.Calibrations, DiskCause.Why(folder.Calibrations, fault));
        }
    }));

    private static bool IsSame(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static Calibration One(FieldReader fields) => new(
        fields.OptionalText("printer"),
        fields.Text("sheet"),
        fields.Number("shiftX", -Calibration.MostShift, Calibration.MostShift),
        fields.Number("shiftY", -Calibration.MostShift, Calibration.MostShift),
        fields.Number("scaleX", Calibration.LeastScale, Calibration.MostScale),
        fields.Number("scaleY", Calibration.LeastScale, Calibration.MostScale),
        Day(fields));

    private static DateOnly Day(FieldReader fields)
    {
        var text = fields.Text("measured");
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && text.Length > 0)
        {
            fields.Refuse("measured", PrinterProblems.NotADay(text));
        }

        return day;
    }

    private static byte[] Written(IEnumerable<Calibration> all)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Readable))
        {
            json.WriteStartArray();
            foreach (var one in all)
            {
                Write(json, one);
            }

            json.WriteEndArray();
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    private static void Write(Utf8JsonWriter json, Calibration one)
    {
        json.WriteStartObject();
        if (one.Printer is not null)
        {
            json.WriteString("printer", one.Printer);
        }

        json.WriteString("sheet", one.Sheet);
        json.WriteNumber("shiftX", one.ShiftX);
        json.WriteNumber("shiftY", one.ShiftY);
        json.WriteNumber("scaleX", one.ScaleX);
        json.WriteNumber("scaleY", one.ScaleY);
        json.WriteString("measured", one.Measured.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteEndObject();
    }

    /// <summary>What was looked for.</summary>
    /// <param name="Calibration">What was measured; null when nothing was.</param>
    public readonly record struct Found(Calibration? Calibration);
}

/// <summary>What can be wrong with what is kept of printers.</summary>
internal static class PrinterProblems
{
    /// <summary>The code of every fault inside <c>calibration.json</c>.</summary>
    internal const string FileCode = "JL423";

    internal static string NotADay(string read) => $"Read {Quoted.Of(read)} as the day it was measured; write it as 2026-03-09.";
}
