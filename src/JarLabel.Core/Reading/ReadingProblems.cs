namespace JarLabel.Core.Reading;

/// <summary>What can be wrong with the form of a data file, whatever it is about.</summary>
internal static class ReadingProblems
{
    internal static Problem NotJson(string code, string file, JsonException fault) =>
        new(code, $"This is not a JSON file that can be read: {FirstSentence(fault.Message)}", $"{file}{At(fault)}");

    internal static Problem TooLong(string code, string file) =>
        new(code, $"The file is longer than {StrictJson.MostBytes / (1024 * 1024)} MB; a file that is written for this program is a thousand times shorter. Was another one meant?", file);

    internal static Problem NotUtf8(string code, string file, ReadOnlySpan<byte> bytes, int at) => new(
        code,
        Utf8Fault.IsUtf16(bytes)
            ? "The file is UTF-16, and JSON is UTF-8. Save it again as \"UTF-8\"."
            : $"Read the byte 0x{bytes[at]:X2}, which is no text in UTF-8. Save the file again as \"UTF-8\", or write the letter anew.",
        $"{file}{At(bytes, at)}");

    internal static Problem HalfCharacter(string code, string file, ReadOnlySpan<byte> bytes, int at) => new(
        code,
        $"Read {Encoding.ASCII.GetString(bytes.Slice(at, 6))}, half a character; write the character itself, or both halves, such as \\ud83c\\udfbb.",
        $"{file}{At(bytes, at)}");

    internal static Problem Missing(string code, string where, string name) =>
        new(code, $"The member \"{name}\" is missing.", where);

    internal static Problem Unknown(string code, string where, string name, IEnumerable<string> known) =>
        new(code, $"This member is not known here; allowed are: {string.Join(", ", known)}.{Nearest.Asked(name, known)}", where);

    internal static Problem Doubled(string code, string where) =>
        new(code, "This member stands twice; keep one of them.", where);

    internal static Problem Empty(string code, string where) =>
        new(code, "The text is empty; write something or leave the member out where that is allowed.", where);

    internal static Problem WrongKind(string code, string where, JsonElement found, string wanted) =>
        new(code, $"Read {Shown(found)}; wanted {wanted}.", where);

    internal static Problem OutOfRange(string code, string where, JsonElement found, decimal least, decimal most) =>
        new(code, string.Create(CultureInfo.InvariantCulture, $"Read {Shown(found)}; allowed is {least} to {most}."), where);

    internal static Problem NotWhole(string code, string where, decimal found) =>
        new(code, string.Create(CultureInfo.InvariantCulture, $"Read {found}; wanted a whole number."), where);

    internal static Problem NotAChoice(string code, string where, string found, IEnumerable<string> choices) =>
        new(code, $"Read \"{found}\"; allowed are: {string.Join(", ", choices)}.", where);

    private static string Shown(JsonElement found)
    {
        var raw = found.GetRawText();
        return raw.Length <= 40 ? raw : raw[..37] + "...";
    }

    private static string FirstSentence(string message) => message.Split(" LineNumber:", 2)[0];

    private static string At(ReadOnlySpan<byte> bytes, int at)
    {
        var lines = bytes[..at].Count((byte)'\n');
        return string.Create(CultureInfo.InvariantCulture, $" line {lines + 1}, byte {at - bytes[..at].LastIndexOf((byte)'\n')}");
    }

    private static string At(JsonException fault) =>
        fault.LineNumber is { } line
            ? string.Create(CultureInfo.InvariantCulture, $" line {line + 1}, byte {(fault.BytePositionInLine ?? 0) + 1}")
            : "";
}
