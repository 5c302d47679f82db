namespace JarLabel.Store.Exchange;

/// <summary>The lines of an export: one JSON object each, the first about the whole, then one an event.</summary>
internal static class ExportLine
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static void WriteHeader(Stream stream, ExportHeader header) => WriteLine(stream, json =>
    {
        json.WriteString("ledger", header.LedgerId);
        json.WriteNumber("events", header.Events);
        json.WriteString("seal", header.Seal);
    });

    internal static void WriteEvent(Stream stream, EventLink link) => WriteLine(stream, json =>
    {
        json.WriteNumber("sequence", link.Row.Sequence);
        json.WriteString("subject", SubjectWords.Of(link.Row.Of.Kind));
        json.WriteNumber("number", link.Row.Of.Number);
        json.WriteString("at", link.Row.At);
        json.WriteString("kind", link.Row.Kind);
        json.WriteNumber("revision", link.Row.Revision);
        json.WritePropertyName("body");
        json.WriteRawValue(link.Row.Body, skipInputValidation: true);
        json.WriteString("seal", Convert.ToHexStringLower(link.Seal));
    });

    internal static Result<ExportHeader> ReadHeader(string where, ReadOnlyMemory<byte> line) => StrictJson.ReadObject(
        where, ExchangeProblems.FormCode, line, fields => new ExportHeader(fields.Text("ledger"), Whole(fields, "events", 0), fields.Text("seal")));

    internal static Result<EventLink> ReadEvent(string where, ReadOnlyMemory<byte> line) => StrictJson.ReadObject(where, ExchangeProblems.FormCode, line, fields =>
    {
        var sequence = Whole(fields, "sequence", 1);
        var of = new Subject(fields.Choice("subject", SubjectWords.Kinds), fields.Count("number", 1, int.MaxValue));
        var row = new EventRow(sequence, of, Moment(fields), fields.Text("kind"), fields.Count("revision", 0, int.MaxValue), fields.Verbatim("body"));
        return new EventLink(row, Seal(fields));
    });

    private static long Whole(FieldReader fields, string name, long least) => (long)fields.Exact(name, least, long.MaxValue);

    private static string Moment(FieldReader fields)
    {
        var at = fields.Text("at");
        if (at.Length > 0 && !LedgerStep.IsMoment(at))
        {
            fields.Refuse("at", ExchangeProblems.BadMoment(at));
        }

        return at;
    }

    private static byte[] Seal(FieldReader fields)
    {
        var seal = fields.Text("seal");
        if (seal.Length == 64 && seal.All(char.IsAsciiHexDigitLower))
        {
            return Convert.FromHexString(seal);
        }

        fields.Refuse("seal", "Wanted are 64 lower-case hexadecimal digits.");
        return new byte[32];
    }

    private static void WriteLine(Stream stream, Action<Utf8JsonWriter> write)
    {
        using (var json = new Utf8JsonWriter(stream, Plain))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }
}

/// <summary>The first line of an export.</summary>
/// <param name="LedgerId">Whose events they are.</param>
/// <param name="Events">How many follow.</param>
/// <param name="Seal">The seal of the last one.</param>
internal sealed record ExportHeader(string LedgerId, long Events, string Seal);
