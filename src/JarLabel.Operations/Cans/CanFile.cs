using System.Text.Encodings.Web;

namespace JarLabel.Operations.Cans;

/// <summary>A shop's <c>solvents.json</c> with one row more. What people wrote into it, their comments and their order, stays as it was.</summary>
internal static class CanFile
{
    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly JsonReaderOptions Lenient = new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip };

    /// <summary>The file with the row behind its last one.</summary>
    /// <param name="file">A list of rows that was read without a fault; empty where there is no file yet.</param>
    /// <param name="row">The row.</param>
    internal static byte[] With(ReadOnlySpan<byte> file, ReadOnlySpan<byte> row)
    {
        if (file.IsEmpty)
        {
            return [.. "[\n"u8, .. row, .. "\n]\n"u8];
        }

        var (place, first) = EndOfRows(file);
        return [.. file[..place], .. first ? "\n"u8 : ",\n"u8, .. row, .. first ? "\n"u8 : ""u8, .. file[place..]];
    }

    /// <summary>The can as a row, set in as the files are written.</summary>
    internal static byte[] Row(string id, CanRequest can, DateTime now)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable))
        {
            json.WriteStartObject();
            json.WriteString("id", id);
            json.WriteString("name", can.Name);
            json.WriteString("shortName", can.Name);
            json.WriteStartArray("contains");
            json.WriteStartObject();
            json.WriteStartArray(can.Contents.Measure == Measure.Volume ? "byVolume" : "byWeight");
            foreach (var part in can.Contents.Parts)
            {
                Write(json, part);
            }

            json.WriteEndArray();
            json.WriteEndObject();
            json.WriteEndArray();
            json.WriteString("source", FormattableString.Invariant($"the can's safety data sheet, entered {now:yyyy-MM-dd}"));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetBytes("  " + Encoding.UTF8.GetString(stream.ToArray()).ReplaceLineEndings("\n").Replace("\n", "\n  ", StringComparison.Ordinal));
    }

    private static void Write(Utf8JsonWriter json, Part part)
    {
        json.WriteStartObject();
        json.WriteString("of", part.Of);
        if (part.IsRange)
        {
            json.WriteNumber("from", part.Least);
            json.WriteNumber("to", part.Most);
        }
        else
        {
            json.WriteNumber("parts", part.Parts);
        }

        json.WriteEndObject();
    }

    /// <summary>Where the last row ends, or the list begins when it has none.</summary>
    private static (int Place, bool First) EndOfRows(ReadOnlySpan<byte> file)
    {
        var mark = file.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? 3 : 0;
        var reader = new Utf8JsonReader(file[mark..], Lenient);
        var (place, first) = (mark, true);
        while (reader.Read())
        {
            if (reader is { TokenType: JsonTokenType.StartArray, CurrentDepth: 0 })
            {
                place = mark + (int)reader.BytesConsumed;
            }
            else if (reader is { TokenType: JsonTokenType.EndObject, CurrentDepth: 1 })
            {
                (place, first) = (mark + (int)reader.BytesConsumed, false);
            }
        }

        return (place, first);
    }
}
