namespace JarLabel.Operations.Answers;

/// <summary>What an operation shows a person: a title, rows of two columns, tables with aligned figures, and the step that comes next.
/// It is kept as blocks, which a terminal shows as lines and a page as a page.</summary>
internal sealed class Screen
{
    private readonly List<Block> blocks = [];

    /// <summary>The blocks in order.</summary>
    internal IReadOnlyList<Block> Blocks => blocks;

    /// <summary>The lines in order, steps spelled as commands.</summary>
    internal IEnumerable<ScreenLine> Lines => blocks.SelectMany(block => block.Lines());

    internal Screen Title(string text) => Add(LineStyle.Title, text);

    internal Screen Text(string text) => Add(LineStyle.Plain, text);

    internal Screen Gap() => Add(LineStyle.Plain, "");

    /// <summary>A caution: said once, in one style everywhere.</summary>
    internal Screen Caution(string text) => Add(LineStyle.Caution, text);

    /// <summary>One more row after all that was said, before the next command.</summary>
    internal Screen Told(string name, string value)
    {
        var last = blocks.FindLastIndex(block => block is Block.Next);
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

    /// <summary>A picture made of letters of one width.</summary>
    internal Screen Drawing(params IEnumerable<string> rows)
    {
        blocks.Add(new Block.Drawing([.. rows]));
        return this;
    }

    /// <summary>The step that naturally comes next, always last.</summary>
    /// <param name="verb">The step.</param>
    /// <param name="values">What to fill in.</param>
    internal Screen Next(string verb, params IEnumerable<(string Name, string? Value)> values) => Next(Step(verb, [.. values]));

    /// <summary>A step with what to fill in.</summary>
    internal static Remedy Step(string verb, params IReadOnlyList<(string Name, string? Value)> values) => new(verb, [.. values.Where(value => value.Value is not null).Select(value => new InputName(value.Name, value.Value))]);

    /// <summary>The step that naturally comes next, always last.</summary>
    internal Screen Next(Remedy step) => NextInWords(Message.Of($"{step}"));

    /// <summary>What comes next, in a sentence.</summary>
    internal Screen NextInWords(Message words)
    {
        Gap();
        blocks.Add(new Block.Next(words));
        return this;
    }

    /// <summary>After a rehearsal, how it is done in earnest.</summary>
    /// <param name="does">What it then does: <c>records</c>.</param>
    internal Screen InEarnest(string does = "records") => NextInWords(Message.Of($"the same without {new InputName("dry-run")} {does} it"));

    /// <summary>Rows of two columns, the second ones aligned. Rows whose value is null are left out.</summary>
    internal Screen Rows(params IEnumerable<(string Name, string? Value)> rows)
    {
        blocks.Add(new Block.Pairs([.. rows.Where(row => row.Value is not null).Select(row => (row.Name, (Message)row.Value!))]));
        return this;
    }

    /// <summary>One more row of the last rows, in a sentence that may name steps.</summary>
    internal Screen And(string name, Message value)
    {
        blocks[^1] = new Block.Pairs([.. ((Block.Pairs)blocks[^1]).Rows, (name, value)]);
        return this;
    }

    /// <summary>Things to do in order, some of which are steps.</summary>
    internal Screen ToDo(IReadOnlyList<(string Words, Remedy? Step)> things)
    {
        blocks.Add(new Block.ToDo(things));
        return this;
    }

    /// <summary>A table; columns whose header starts with a blank are aligned to the right.</summary>
    /// <param name="header">The names of the columns.</param>
    /// <param name="rows">Their cells.</param>
    /// <param name="style">The style of a row by its place; null for plain rows.</param>
    /// <param name="more">The step that shows more of what a row is about, by its place.</param>
    internal Screen Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows, Func<int, LineStyle>? style = null, Func<int, Remedy>? more = null)
    {
        blocks.Add(new Block.Table(header, rows, [.. rows.Select((_, place) => style?.Invoke(place) ?? LineStyle.Row)]) { More = more });
        return this;
    }

    private Screen Add(LineStyle style, string text)
    {
        blocks.Add(new Block.Line(style, text));
        return this;
    }
}
