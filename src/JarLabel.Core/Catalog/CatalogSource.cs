using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>One catalog file: where its rows come from, read when first asked for.</summary>
internal sealed class CatalogSource<T>
    where T : CatalogRow
{
    private readonly Lazy<Result<CatalogTable<T>>> read;

    internal CatalogSource(string kind, string file, IEnumerable<CatalogFile> theirs, Func<FieldReader, T> readRow)
    {
        var shop = theirs.FirstOrDefault(f => f.Name == file);
        read = new(() => CatalogTable<T>.Read(kind, new(file, EmbeddedFile.Read("catalog/" + file)), shop, readRow));
    }

    internal CatalogTable<T> Table => read.Value.Require();

    internal IReadOnlyList<Problem> Faults => read.Value.Problems;
}
