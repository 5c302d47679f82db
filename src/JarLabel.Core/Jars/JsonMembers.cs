namespace JarLabel.Core.Jars;

/// <summary>The members of a JSON object, taken by name. One that is missing or of another kind gives a stand-in, and the object then
/// does not count as taken.</summary>
internal sealed class JsonMembers(JsonElement element)
{
    private readonly bool isObject = element.ValueKind == JsonValueKind.Object;
    private int taken;
    private bool amiss;

    /// <summary>True when every member was there, of its kind, and none is left over or stands twice.</summary>
    internal bool AllTaken => isObject && !amiss && taken == element.GetPropertyCount();

    internal bool Has(string name) => isObject && element.TryGetProperty(name, out _);

    internal string Text(string name) => Take(name, JsonValueKind.String)?.GetString() ?? "";

    internal string? OptionalText(string name) => Has(name) ? Text(name) : null;

    internal double Number(string name) => Take(name, JsonValueKind.Number) is { } found && found.TryGetDouble(out var number) ? number : Amiss<double>();

    internal int Count(string name) => Take(name, JsonValueKind.Number) is { } found && found.TryGetInt32(out var count) ? count : Amiss<int>();

    internal SupplyNumber? Supply(string name) =>
        !Has(name) ? null : Count(name) is (>= 1 and <= CheckedNumber.Highest) and var number ? SupplyNumber.From(number) : Amiss<SupplyNumber>();

    internal DateTime Moment(string name) => Take(name, JsonValueKind.String) is { } found && found.TryGetDateTime(out var moment) ? moment : Amiss<DateTime>();

    internal DateOnly Date(string name) =>
        DateOnly.TryParseExact(Text(name), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : Amiss<DateOnly>();

    internal bool True(string name) => Take(name, JsonValueKind.True) is not null;

    internal ContainerMaterial Material(string name)
    {
        var written = Text(name);
        foreach (var material in ContainerMaterials.ByWord.Values)
        {
            if (material.ToString() == written)
            {
                return material;
            }
        }

        return Amiss<ContainerMaterial>();
    }

    internal T Inner<T>(string name, Func<JsonMembers, T> read) => Read(Take(name, JsonValueKind.Object) ?? default, read);

    internal IReadOnlyList<T> List<T>(string name, Func<JsonMembers, T> read)
    {
        var list = new List<T>();
        if (Take(name, JsonValueKind.Array) is { } found)
        {
            foreach (var item in found.EnumerateArray())
            {
                list.Add(Read(item, read));
            }
        }

        return list;
    }

    private T Read<T>(JsonElement inner, Func<JsonMembers, T> read)
    {
        var members = new JsonMembers(inner);
        var value = read(members);
        amiss |= !members.AllTaken;
        return value;
    }

    private JsonElement? Take(string name, JsonValueKind kind)
    {
        if (isObject && element.TryGetProperty(name, out var found) && found.ValueKind == kind)
        {
            taken++;
            return found;
        }

        amiss = true;
        return null;
    }

    private T Amiss<T>()
        where T : struct
    {
        amiss = true;
        return default;
    }
}
