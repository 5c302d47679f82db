namespace JarLabel.Acceptance.Fuzz;

/// <summary>An export whose lines were changed and sealed anew, as somebody who knows how seals are made could do it. Written for the tests from the
/// description of the chain: SHA-256 over the seal before; sequence in 8 bytes, number and revision in 4, the lowest byte first; then subject, moment,
/// kind and body, each with its length before it, seven bits a byte.</summary>
internal static class Resealed
{
    /// <summary>The lines with seals that fit, the one in the head included.</summary>
    /// <param name="lines">The head, then an event a line.</param>
    internal static string[] Of(IReadOnlyList<string> lines)
    {
        var (seal, made) = (new byte[32], new List<string> { "" });
        for (var i = 1; i < lines.Count; i++)
        {
            var line = JsonNode.Parse(lines[i])!.AsObject();
            var body = BodyOf(lines[i]);
            seal = Seal(seal, i, line, body);
            made.Add($$"""{"sequence":{{i}},"subject":{{line["subject"]!.ToJsonString()}},"number":{{line["number"]!.ToJsonString()}},"at":{{line["at"]!.ToJsonString()}},"kind":{{line["kind"]!.ToJsonString()}},"revision":{{line["revision"]!.ToJsonString()}},"body":{{body}},"seal":"{{Convert.ToHexStringLower(seal)}}"}""");
        }

        var head = JsonNode.Parse(lines[0])!.AsObject();
        (head["events"], head["seal"]) = (made.Count - 1, Convert.ToHexStringLower(seal));
        made[0] = head.ToJsonString();
        return [.. made];
    }

    /// <summary>The line with another body.</summary>
    internal static string With(string line, string body)
    {
        var before = BodyOf(line);
        var at = line.IndexOf("\"body\":" + before, StringComparison.Ordinal) + "\"body\":".Length;
        return line[..at] + body + line[(at + before.Length)..];
    }

    /// <summary>The event as it is written in its line.</summary>
    internal static string BodyOf(string line)
    {
        var from = line.IndexOf("\"body\":", StringComparison.Ordinal) + "\"body\":".Length;
        return line[from..line.LastIndexOf(",\"seal\":", StringComparison.Ordinal)];
    }

    private static byte[] Seal(byte[] before, long sequence, JsonObject line, string body)
    {
        using var bytes = new MemoryStream();
        using (var writer = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
        {
            writer.Write(before);
            writer.Write(sequence);
            writer.Write(Whole(line["number"]!));
            writer.Write(Whole(line["revision"]!));
            writer.Write(Text(line["subject"]!));
            writer.Write(Text(line["at"]!));
            writer.Write(Text(line["kind"]!));
            writer.Write(body);
        }

        return SHA256.HashData(bytes.ToArray());
    }

    /// <summary>What is no whole number is refused before its seal is looked at.</summary>
    private static int Whole(JsonNode node) => int.TryParse(node.ToJsonString(), System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : 0;

    private static string Text(JsonNode node) => node.GetValueKind() == System.Text.Json.JsonValueKind.String ? node.GetValue<string>() : "";
}
