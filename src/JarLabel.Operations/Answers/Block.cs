namespace JarLabel.Operations.Answers;

/// <summary>A part of what an operation has to say, as every surface shows it in its own way.</summary>
internal abstract record Block
{
    /// <summary>As lines of figures and letters of one width.</summary>
    internal abstract IEnumerable<ScreenLine> Lines();

    /// <summary>A line of its own.</summary>
    internal sealed record Line(LineStyle Style, string Text) : Block
    {
        internal override IEnumerable<ScreenLine> Lines() => [new(Style, Text)];
    }

    /// <summary>A picture made of letters of one width.</summary>
    internal sealed record Drawing(IReadOnlyList<string> Rows) : Block
    {
        internal override IEnumerable<ScreenLine> Lines() => Rows.Select(row => new ScreenLine(LineStyle.Plain, "  " + row));
    }

    /// <summary>What comes next.</summary>
    internal sealed record Next(Message Words) : Block
    {
        internal override IEnumerable<ScreenLine> Lines() => [new(LineStyle.Next, Words.In(CommandLine.Bare))];
    }

    /// <summary>Rows of two columns.</summary>
    internal sealed record Pairs(IReadOnlyList<(string Name, Message Value)> Rows) : Block
    {
        internal override IEnumerable<ScreenLine> Lines()
        {
            var width = Rows.Select(row => row.Name.Length).DefaultIfEmpty().Max();
            return Rows.Select(row => new ScreenLine(LineStyle.Row, $"  {row.Name.PadRight(width)}   {row.Value.In(CommandLine.Quoted)}"));
        }
    }

    /// <summary>Things to do in order, some of which are steps.</summary>
    internal sealed record ToDo(IReadOnlyList<(string Words, Remedy? Step)> Things) : Block
    {
        internal override IEnumerable<ScreenLine> Lines() => new Pairs([.. Things.SelectMany((thing, place) => Rows(thing.Words, thing.Step, place + 1))]).Lines();

        private static IEnumerable<(string, Message)> Rows(string words, Remedy? step, int place) => step is null
            ? [(place.ToString(CultureInfo.InvariantCulture), words)]
            : [(place.ToString(CultureInfo.InvariantCulture), words), ("", CommandLine.Of(step))];
    }

    /// <summary>A table.</summary>
    /// <param name="Header">The names of the columns; one that starts with a blank is aligned to the right.</param>
    /// <param name="Rows">Their cells.</param>
    /// <param name="Styles">The style of each row.</param>
    internal sealed record Table(IReadOnlyList<string> Header, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<LineStyle> Styles) : Block
    {
        /// <summary>The step that shows more of what a row is about, by its place; null for rows that are all there is. A page makes links of them.</summary>
        internal Func<int, Remedy>? More { get; init; }

        internal bool IsRight(int column) => Header[column].StartsWith(' ');

        internal override IEnumerable<ScreenLine> Lines()
        {
            IReadOnlyList<IReadOnlyList<string>> cells = [[.. Header.Select(h => h.Trim())], .. Rows];
            var spelled = Aligned([.. cells.Select(row => row.Select(PlainAscii.Of).ToArray())]);
            return Aligned(cells).Select((line, place) => new ScreenLine(place == 0 ? LineStyle.Header : Styles[place - 1], line) { Plain = spelled[place] });
        }

        private string[] Aligned(IReadOnlyList<IReadOnlyList<string>> rows)
        {
            var widths = Header.Select((_, i) => rows.Max(row => row[i].Length)).ToArray();
            return [.. rows.Select(row => ("  " + string.Join("   ", row.Select((cell, i) => IsRight(i) ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i])))).TrimEnd())];
        }
    }
}

/// <summary>One line for a person.</summary>
/// <param name="Style">What kind of line it is.</param>
/// <param name="Text">Its text, in full typography.</param>
internal readonly record struct ScreenLine(LineStyle Style, string Text)
{
    /// <summary>The same without typography, where its columns then stand otherwise; else its text is only spelled out.</summary>
    internal string? Plain { get; init; }

    /// <summary>This line without typography.</summary>
    internal ScreenLine Spelled => new(Style, Plain ?? PlainAscii.Of(Text));
}
