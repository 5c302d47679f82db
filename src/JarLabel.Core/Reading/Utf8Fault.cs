using System.Buffers;
using System.Text.Unicode;

namespace JarLabel.Core.Reading;

/// <summary>Finds what keeps bytes from being text: what is not UTF-8, and in JSON half a character written as an escape (<c>\ud800</c>). The JSON
/// parser takes both, and throws only when somebody asks for the text.</summary>
public static class Utf8Fault
{
    private const int Escape = 6;

    /// <summary>Where the first byte stands that is not UTF-8, from 0; null where there is none.</summary>
    public static int? NotUtf8(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return null;
        }

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var taken) == OperationStatus.Done)
        {
            at += taken;
        }

        return at;
    }

    /// <summary>True for the marks that begin a text of 16 or 32 bits a character.</summary>
    public static bool IsUtf16(ReadOnlySpan<byte> bytes) => bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]);

    /// <summary>Where half a character is written as an escape, from 0; null where none is.</summary>
    /// <param name="json">JSON that the parser takes.</param>
    /// <param name="options">How it takes it.</param>
    internal static int? HalfCharacter(ReadOnlySpan<byte> json, JsonReaderOptions options)
    {
        if (json.IndexOf("\\u"u8) < 0)
        {
            return null;
        }

        var reader = new Utf8JsonReader(json, options);
        while (reader.Read())
        {
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && reader.ValueIsEscaped && HalfIn(reader.ValueSpan) is { } at)
            {
                return (int)reader.TokenStartIndex + 1 + at;
            }
        }

        return null;
    }

    private static int? HalfIn(ReadOnlySpan<byte> text)
    {
        for (var at = 0; at < text.Length;)
        {
            if (UnitAt(text, at) is not { } unit)
            {
                at += text[at] == '\\' ? 2 : 1;
            }
            else if (char.IsHighSurrogate(unit) && UnitAt(text, at + Escape) is { } low && char.IsLowSurrogate(low))
            {
                at += 2 * Escape;
            }
            else if (char.IsSurrogate(unit))
            {
                return at;
            }
            else
            {
                at += Escape;
            }
        }

        return null;
    }

    private static char? UnitAt(ReadOnlySpan<byte> text, int at) =>
        at + Escape <= text.Length && text[at] == '\\' && text[at + 1] == 'u'
        && int.TryParse(text.Slice(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var unit)
            ? (char)unit
            : null;
}
