using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>One catalog file: where its rows come from, read when first asked for.</summary>
internal sealed class CatalogSource<T>
    where T : CatalogRow
{
    private readonly Lazy<Result<CatalogTable<T>>> read;

    internal CatalogSource(
        string kind, string file, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> theirs, Func<FieldReader, T> readRow) =>
        read = new(() => CatalogTable<T>.Read(kind, file, EmbeddedFile.Read("catalog/" + file), Theirs(file, theirs), readRow));

    internal CatalogTable<T> Table => read.Value.Require();

    internal IReadOnlyList<Problem> Faults => read.Value.Problems;

    private static ReadOnlyMemory<byte>? Theirs(string file, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> theirs) =>
        theirs.TryGetValue(file, out var bytes) ? bytes : default(ReadOnlyMemory<byte>?);
}
