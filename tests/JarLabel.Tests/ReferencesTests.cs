using System.Reflection;

namespace JarLabel.Tests;

public class ReferencesTests
{
    [Fact]
    public void Every_source_a_check_cites_is_listed() =>
        Assert.Empty(Citations().Select(c => c.Id).Where(id => !References.All.ContainsKey(id)).Distinct());

    [Fact]
    public void Every_listed_source_is_cited_by_a_check_or_a_row_of_data() =>
        Assert.Empty(References.All.Keys.Except(Citations().Select(c => c.Id)).Except(DataSources().Select(Sources.Id)));

    [Fact]
    public void Every_constant_is_listed_and_nothing_else_is() => Assert.Equal(
        typeof(References).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!).Order(StringComparer.Ordinal),
        References.All.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void Every_citation_says_where_in_the_source() => Assert.All(Citations(), c => Assert.False(string.IsNullOrWhiteSpace(c.Place)));

    [Fact]
    public void Every_source_says_how_we_came_by_it() => Assert.All(References.All.Values, r => Assert.Contains(r.ComeBy, new[] { "read", "memory" }));

    [Fact]
    public void Every_row_and_figure_of_the_catalog_names_a_listed_source_or_says_practice_or_memory() => Assert.Equal(
        [],
        DataSources().Select(Sources.Id).Except([.. References.All.Keys, Sources.Practice, Sources.Memory]));

    private static IEnumerable<CitesAttribute> Citations() => typeof(References).Assembly.GetTypes()
        .SelectMany(t => t.GetCustomAttributes<CitesAttribute>()
            .Concat(t.GetMethods().SelectMany(m => m.GetCustomAttributes<CitesAttribute>())));

    /// <summary>Every source string of the catalog, found by walking the rows, so that a new kind of figure cannot be forgotten.</summary>
    private static List<string> DataSources()
    {
        var found = new List<string>();
        ShopCatalog catalog = ShopCatalog.Ours;
        IEnumerable<object>[] tables =
        [
            catalog.Substances.Rows, catalog.Solvents.Rows, catalog.Grades.Rows, catalog.Forms.Rows,
            catalog.Keeping.Rows, catalog.Classes.Rows, catalog.Phrases.Rows, catalog.Storage.Rows,
        ];
        foreach (var row in tables.SelectMany(t => t))
        {
            Walk(row, found);
        }

        return found;
    }

    private static void Walk(object row, List<string> found)
    {
        foreach (var property in row.GetType().GetProperties().Where(p => p.GetIndexParameters().Length == 0))
        {
            switch (property.GetValue(row))
            {
                case string text when property.Name == nameof(CatalogRow.Source):
                    found.Add(text);
                    break;
                case string:
                    break;
                case System.Collections.IEnumerable items:
                    items.OfType<object>().Where(IsOurs).ToList().ForEach(item => Walk(item, found));
                    break;
                case { } inner when IsOurs(inner) && inner is not Composition:
                    Walk(inner, found);
                    break;
            }
        }
    }

    private static bool IsOurs(object value) => value.GetType().Namespace == typeof(ShopCatalog).Namespace && !value.GetType().IsEnum && value is not Composition;
}
