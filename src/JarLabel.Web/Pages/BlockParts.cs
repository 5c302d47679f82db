namespace JarLabel.Web.Pages;

/// <summary>What an operation has to say, as parts of a page. What comes next is left to the page, which has links of its own.</summary>
internal static class BlockParts
{
    /// <param name="screen">What there is to say.</param>
    internal static Markup Of(Screen screen) => Html.All(screen.Blocks.Select(One));

    /// <summary>The steps that come next, without those that stand in a list of things to do.</summary>
    internal static IEnumerable<Remedy> Next(Screen screen) => screen.Blocks.OfType<Block.Next>().SelectMany(next => next.Words.Remedies)
        .Except(screen.Blocks.OfType<Block.ToDo>().SelectMany(list => list.Things).Select(thing => thing.Step).OfType<Remedy>());

    private static Markup One(Block block) => block switch
    {
        Block.Line { Text.Length: 0 } or Block.Next => default,
        Block.Line { Style: LineStyle.Title } line => Html.Of($"<h2>{line.Text}</h2>"),
        Block.Line { Style: LineStyle.Caution } line => Html.Of($"""<p class="told">{line.Text}</p>"""),
        Block.Drawing drawing => Html.Of($"""<pre class="drawn">{string.Join('\n', drawing.Rows)}</pre>"""),
        Block.Line line => Html.Of($"<p>{line.Text}</p>"),
        Block.Pairs pairs => JarParts.Rows([.. pairs.Rows.Select(row => (row.Name, (string?)row.Value.In(PageSpelling.Any))).Where(row => !IsPlace(row.Item2!))]),
        Block.ToDo list => Html.Of($"<ol>{list.Things.Select(thing => Html.Of($"<li>{thing.Words}{(thing.Step is { } step ? StepLinks.Row([step]) : default)}</li>"))}</ol>"),
        Block.Table table => Table(table),
        _ => default,
    };

    /// <summary>True for a file or folder of the machine, which is of no use on another; a page has links to what was written.</summary>
    private static bool IsPlace(string text) => Path.IsPathFullyQualified(text);

    private static Markup Table(Block.Table table) => Html.Of(
        $"""
        <div class="scroll" tabindex="0"><table><thead><tr>{table.Header.Select((name, i) => Cell("th", table.IsRight(i), Html.Of($"{name.Trim()}")))}</tr></thead>
        <tbody>{table.Rows.Select((row, place) => Html.Of($"<tr>{row.Select((cell, i) => Cell("td", table.IsRight(i), i == 0 && table.More?.Invoke(place) is { } more ? StepLinks.Named(more, cell) : Html.Of($"{cell}"), table.Header[i].Trim()))}</tr>"))}</tbody></table></div>
        """);

    private static Markup Cell(string tag, bool right, Markup text, string? head = null) => Html.Of(
        $"<{Html.Own(tag)}{Html.Own(right ? " class=\"num\"" : "")}{(head is null ? default : Html.Of($" data-head=\"{head}\""))}>{text}</{Html.Own(tag)}>");
}
