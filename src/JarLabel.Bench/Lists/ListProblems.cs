using System.Globalization;
using JarLabel.Core;

namespace JarLabel.Bench.Lists;

/// <summary>What can be wrong with a list of jars.</summary>
internal static class ListProblems
{
    internal static Problem NotReadable(string file, string why) =>
        new("JL340", $"The list cannot be read: {why} Give the name of a table saved as CSV, such as class.csv.", file);

    internal static Problem NotATable(string file) =>
        new("JL341", "This is no table of separated values in UTF-8. Save it from the spreadsheet as \"CSV UTF-8\", with the names of the columns in the first row.", file);

    internal static Problem TooLong(string file, int most) =>
        new("JL342", string.Create(CultureInfo.InvariantCulture, $"The list has more than {most} rows; split it."), file);

    internal static Problem Empty(string file, IEnumerable<string> needed) =>
        new("JL343", $"The list has no rows. The first row names the columns, such as {string.Join(',', needed)}; below it stands one row a jar.", file);

    internal static Problem UnknownColumn(string file, string column, IEnumerable<string> known) =>
        new("JL344", $"Read {Quoted.Of(column)} as a column; there are: {string.Join(", ", known)}. Separate cells by comma, semicolon or tab.", file);

    internal static Problem DoubledColumn(string file, string column) =>
        new("JL345", $"Two columns are called {Quoted.Of(column)}; take one of them out.", file);

    internal static Problem MissingColumn(string file, string column, IEnumerable<string> known) =>
        new("JL346", $"There is no column \"{column}\". The first row names the columns, out of: {string.Join(", ", known)}.", file);

    internal static Problem CellWithoutColumn(string where, string cell) =>
        new("JL347", $"Read {Quoted.Of(cell)} in a cell that no column has a name for. A text with a comma in it stands in quotes, such as \"viola, top\".", where);

    internal static Problem EmptyCell(string where, string example) =>
        new("JL348", $"The cell is empty; write, for example, {example}.", where);
}
