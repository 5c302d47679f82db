namespace JarLabel.Acceptance.Fuzz;

/// <summary>Every member of a JSON object, at any depth, put to every extreme of its kind; and left out, and put to null.</summary>
internal static class Extremes
{
    private static readonly string[] Numbers = ["1e300", "-1", "0", "2147483647", "999999999", "1e-320", "-0.0", "1e999", "12345678901234567890", "0.5"];

    private static readonly string[] Texts =
    [
        "\"\"", "\" \"", "\"\\u0000\"", "\"\\ud800\"", "\"a\\u202eb\"", "\"9999-12-31T23:59:59\"", "\"9999-12-31\"", "\"0001-01-01\"", "\"0001-01-01T00:00:00\"",
        "\"2026-03-09T10:00:00Z\"", "\"" + new string('x', 4000) + "\"", "\"e" + string.Concat(Enumerable.Repeat("\\u0301", 3000)) + "\"", "\"../../../etc/passwd\"",
    ];

    private static readonly string[] Anything = ["null", "[]", "{}", "[null]", "[[]]", "true", "7", "\"x\""];

    /// <summary>The objects that come of it, as JSON.</summary>
    internal static IEnumerable<string> Of(string json) => Places(JsonNode.Parse(json)!, []).SelectMany(place => Changed(json, place));

    private static IEnumerable<string> Changed(string json, object[] place)
    {
        var whole = JsonNode.Parse(json)!;
        var kind = At(whole, place)!.GetValueKind();
        var puts = Anything.Concat(kind == JsonValueKind.Number ? Numbers : kind == JsonValueKind.String ? Texts : []);
        foreach (var put in puts)
        {
            yield return Put(json, place, put);
        }

        yield return Put(json, place, null);
        if (place is [.., string])
        {
            var parent = At(whole, place[..^1])!.AsObject();
            parent["noSuchMember"] = 1;
            yield return whole.ToJsonString();
        }
    }

    private static string Put(string json, object[] place, string? put)
    {
        const string mark = "\"put it here\"";
        var whole = JsonNode.Parse(json)!;
        var (parent, last) = (At(whole, place[..^1])!, place[^1]);
        if (put is null && last is string left)
        {
            parent.AsObject().Remove(left);
        }
        else if (put is null)
        {
            parent.AsArray().RemoveAt((int)last);
        }
        else if (last is string name)
        {
            parent.AsObject()[name] = JsonNode.Parse(mark);
        }
        else
        {
            parent.AsArray()[(int)last] = JsonNode.Parse(mark);
        }

        return whole.ToJsonString().Replace(mark, put, StringComparison.Ordinal);
    }

    private static IEnumerable<object[]> Places(JsonNode node, object[] above) => node switch
    {
        JsonObject members => members.SelectMany(member => Under(member.Value, [.. above, member.Key])),
        JsonArray items => items.Index().SelectMany(item => Under(item.Item, [.. above, item.Index])),
        _ => [],
    };

    private static IEnumerable<object[]> Under(JsonNode? node, object[] place) => node is null ? [] : [place, .. Places(node, place)];

    private static JsonNode? At(JsonNode node, object[] place) => place.Aggregate((JsonNode?)node, (at, step) => step is string name ? at![name] : at![(int)step]);
}
