namespace JarLabel.Operations.Lists;

/// <summary>What can be wrong with a list of jars.</summary>
internal static class ListProblems
{
    private const int MostNamed = 12;

    internal static Problem NotReadable(string file, string why) =>
        new("JL340", $"The list cannot be read: {why} Give the name of a table saved as CSV, such as class.csv.", file);

    internal static Problem NotUtf8(string where, long at, byte read, bool wide) => new(
        "JL341",
        string.Create(CultureInfo.InvariantCulture, $"{(wide ? "This is UTF-16" : $"Byte {at + 1} of the file, 0x{read:X2}, is no text in UTF-8")}, and a list is a table of separated values in UTF-8. Save it from the spreadsheet as \"CSV UTF-8\", with the names of the columns in the first row."),
        where);

    internal static Problem LongLine(string where, int most) =>
        new("JL366", string.Create(CultureInfo.InvariantCulture, $"The line is longer than {most / 1024} kB, and a row is one line. Save the list from the spreadsheet as \"CSV UTF-8\"."), where);

    internal static Problem StrayMark(string where, string cell) =>
        new("JL364", $"Read {Quoted.Of(cell)} in a cell: a text with a quotation mark in it stands in quotes, and the mark is doubled, such as \"5\"\" neck\".", where);

    internal static Problem OpenMark(string where, string rest) =>
        new("JL365", $"Read {Quoted.Of(rest)}: the quotation mark is not closed on its line, and a cell holds no line break. Close it; double a mark that belongs to the text, such as \"5\"\" neck\"; put what stands on several lines on one.", where);

    internal static Problem CopiesAddUp(IReadOnlyList<(JarNumber Jar, int Copies)> jars) =>
        new("JL367", string.Create(CultureInfo.InvariantCulture, $"Named in more than one row, so that the copies add up: {string.Join(", ", jars.Take(MostNamed).Select(jar => string.Create(CultureInfo.InvariantCulture, $"jar {jar.Jar} gets {jar.Copies}")))}{(jars.Count > MostNamed ? " and more" : "")}."));

    internal static Problem TooManyJars(long read) =>
        new("JL368", string.Create(CultureInfo.InvariantCulture, $"Read {read} jar numbers in all; at most {JarSpan.Longest} at once, such as 1..5000."), "jar");

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
