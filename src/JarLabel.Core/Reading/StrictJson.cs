namespace JarLabel.Core.Reading;

/// <summary>Reads the project's data files: strictly, to the end, with every problem at once. Comments and trailing commas are
/// allowed; unknown, missing, null and doubled members are not.</summary>
public static class StrictJson
{
    /// <summary>The longest file that is read: a hundred times the longest that anybody writes by hand.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    private static readonly JsonDocumentOptions Options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
    };

    private static readonly JsonReaderOptions Walk = new() { AllowTrailingCommas = Options.AllowTrailingCommas, CommentHandling = Options.CommentHandling };

    /// <summary>Reads a file that is one object.</summary>
    /// <param name="file">The file's name as the user knows it; it starts every problem's place.</param>
    /// <param name="code">The problem code of this kind of file.</param>
    /// <param name="utf8">The file's bytes.</param>
    /// <param name="read">Takes the object's members; what it returns is used only when there was no problem.</param>
    public static Result<T> ReadObject<T>(string file, string code, ReadOnlyMemory<byte> utf8, Func<FieldReader, T> read)
        where T : notnull
    {
        return Parse(file, code, utf8, (root, problems) =>
        {
            var fields = new FieldReader(root, file + "#", code, problems);
            var value = read(fields);
            fields.RefuseUnknown();
            return value;
        });
    }

    /// <summary>Reads a file that is a list of objects.</summary>
    /// <inheritdoc cref="ReadObject{T}"/>
    public static Result<IReadOnlyList<T>> ReadList<T>(string file, string code, ReadOnlyMemory<byte> utf8, Func<FieldReader, T> read)
        where T : notnull
    {
        return Parse(file, code, utf8, (root, problems) => FieldReader.ReadItems(root, file + "#", code, problems, read));
    }

    private static Result<T> Parse<T>(string file, string code, ReadOnlyMemory<byte> utf8, Func<JsonElement, List<Problem>, T> read)
        where T : notnull
    {
        if (utf8.Length > MostBytes)
        {
            return ReadingProblems.TooLong(code, file);
        }

        if (Utf8Fault.NotUtf8(utf8.Span) is { } at)
        {
            return ReadingProblems.NotUtf8(code, file, utf8.Span, at);
        }

        try
        {
            using var document = JsonDocument.Parse(WithoutByteOrderMark(utf8), Options);
            if (Utf8Fault.HalfCharacter(WithoutByteOrderMark(utf8).Span, Walk) is { } half)
            {
                return ReadingProblems.HalfCharacter(code, file, WithoutByteOrderMark(utf8).Span, half);
            }

            var problems = new List<Problem>();
            DoubledMembers.Refuse(document.RootElement, file + "#", code, problems);
            var value = read(document.RootElement, problems);
            return problems.Count == 0 ? value : Result<T>.Failed(problems);
        }
        catch (JsonException fault)
        {
            return ReadingProblems.NotJson(code, file, fault);
        }
    }

    private static ReadOnlyMemory<byte> WithoutByteOrderMark(ReadOnlyMemory<byte> utf8) =>
        utf8.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? utf8[3..] : utf8;
}
