namespace JarLabel.Operations.Answers;

/// <summary>What an operation shows a person: a title, rows of two columns, tables with aligned figures, and the next useful command.
/// It is kept as blocks, which a terminal shows as lines and a page as a page.</summary>
internal sealed class Screen
{
    private readonly List<Block> blocks = [];

    /// <summary>The blocks in order.</summary>
    internal IReadOnlyList<Block> Blocks => blocks;

    /// <summary>The lines in order.</summary>
    internal IEnumerable<ScreenLine> Lines => blocks.SelectMany(block => block.Lines());

    internal Screen Title(string text) => Add(LineStyle.Title, text);

    internal Screen Text(string text) => Add(LineStyle.Plain, text);

    internal Screen Gap() => Add(LineStyle.Plain, "");

    /// <summary>A caution: said once, in one style everywhere.</summary>
    internal Screen Caution(string text) => Add(LineStyle.Caution, text);

    /// <summary>One more row after all that was said, before the next command.</summary>
    internal Screen Told(string name, string value)
    {
        var last = blocks.FindLastIndex(block => block is Block.Line { Style: LineStyle.Next });
        blocks.InsertRange(last < 1 ? blocks.Count : last - 1, [new Block.Line(LineStyle.Plain, ""), new Block.Pairs([(name, value)])]);
        return this;
    }

    /// <summary>Says behind the title that nothing of it happened.</summary>
    internal Screen Rehearsed()
    {
        var title = blocks.FindIndex(block => block is Block.Line { Style: LineStyle.Title });
        blocks.Insert(title + 1, new Block.Line(LineStyle.Plain, "  Only worked out, as it would be: nothing is recorded, written or sent."));
        return this;
    }

    /// <summary>The next useful command, always last.</summary>
    internal Screen Next(string command) => Gap().Add(LineStyle.Next, command);

    /// <summary>Rows of two columns, the second ones aligned. Rows whose value is null are left out.</summary>
    internal Screen Rows(params IEnumerable<(string Name, string? Value)> rows)
    {
        blocks.Add(new Block.Pairs([.. rows.Where(row => row.Value is not null).Select(row => (row.Name, row.Value!))]));
        return this;
    }

    /// <summary>Rows of which some are commands to type.</summary>
    internal Screen Steps(IReadOnlyList<(string Name, string Value, bool IsCommand)> rows)
    {
        blocks.Add(new Block.Pairs([.. rows.Select(row => (row.Name, row.Value))]) { Commands = [.. rows.Index().Where(row => row.Item.IsCommand).Select(row => row.Index)] });
        return this;
    }

    /// <summary>A table; columns whose header starts with a blank are aligned to the right.</summary>
    /// <param name="header">The names of the columns.</param>
    /// <param name="rows">Their cells.</param>
    /// <param name="style">The style of a row by its place; null for plain rows.</param>
    internal Screen Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows, Func<int, LineStyle>? style = null)
    {
        blocks.Add(new Block.Table(header, rows, [.. rows.Select((_, place) => style?.Invoke(place) ?? LineStyle.Row)]));
        return this;
    }

    private Screen Add(LineStyle style, string text)
    {
        blocks.Add(new Block.Line(style, text));
        return this;
    }
}
