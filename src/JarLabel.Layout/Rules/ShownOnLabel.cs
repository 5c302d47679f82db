using JarLabel.Core.Hazards;

namespace JarLabel.Layout.Rules;

/// <summary>What of a label's words and pictograms is really printed, and how large: read from the marks, by the key each box prints.</summary>
internal sealed class ShownOnLabel
{
    /// <summary>Everything that the rules call label text.</summary>
    private static readonly string[] Legal = ["signal", "poison", "hazards", "precautions", "contents", "owner", "moreOnCard", "lid", "firstAid", "dangers", "swallowed"];

    /// <summary>Words before a number or an address of mail.</summary>
    private static readonly string[] Reaching = ["tel", "telephone", "phone", "mobile", "call", "mail", "email", "e-mail"];

    /// <summary>What moves to the card when a design has no place for it.</summary>
    private static readonly string[] Grave = ["poison", "hazards", "precautions"];

    private const string SymbolsKey = "*symbols", SkullKey = "*skull", Pointer = "moreOnCard";

    private readonly LabelText text;
    private readonly ITextRuler ruler;
    private readonly ILookup<string, Mark> marks;
    private readonly (string Key, IReadOnlyList<string> Texts)[] movedTexts;
    private readonly HashSet<string> moved;

    internal ShownOnLabel(PlacedLabel label, LabelText text, ITextRuler ruler)
    {
        this.text = text;
        this.ruler = ruler;
        var keys = Keys(label.Design.Box).ToDictionary(box => box.Name, box => box.Key, StringComparer.Ordinal);
        marks = label.Marks.ToLookup(mark => keys.GetValueOrDefault(mark.Box, mark.Box), StringComparer.Ordinal);
        movedTexts = [.. label.Moved.Select(m => (keys.GetValueOrDefault(m.Box, m.Box), m.Texts))];
        moved = [.. movedTexts.Select(m => m.Key)];
        Width = Math.Min(label.Area.Width, label.Area.Height);
        Length = Math.Max(label.Area.Width, label.Area.Height);
    }

    /// <summary>The shorter side, mm.</summary>
    internal double Width { get; }

    /// <summary>The longer side, mm.</summary>
    internal double Length { get; }

    /// <summary>True when something of it is printed.</summary>
    internal bool Has(string key) => marks[key].Any();

    /// <summary>True when the label has no such words, or all of them are printed.</summary>
    internal bool HasAll(string key) => !Wanted(key) || (Has(key) && !moved.Contains(key));

    /// <summary>True when there is something of it to print.</summary>
    internal bool Wanted(string key) => text.Words.GetValueOrDefault(key) is { Count: > 0 } || (text.Lists.GetValueOrDefault(key)?.Count ?? 0) > 0;

    /// <summary>True when something says what is in the jar.</summary>
    internal bool Identified => Has("grade") || Has("contents") || Has("title");

    /// <summary>True when every pictogram of the label is printed.</summary>
    internal bool HasAllPictograms => Pictograms.Count() == text.Pictograms.Count;

    /// <summary>True when the skull and crossbones is printed, bare or as the pictogram of acute toxicity.</summary>
    internal bool HasSkull => Has(SkullKey) || (HasAllPictograms && text.Pictograms.Contains("GHS06"));

    /// <summary>One side of the smallest pictogram, mm; from tip to tip it is longer by the square root of 2. Null when there is none.</summary>
    internal double? PictogramSide => Pictograms.Any() ? Pictograms.Min(place => place.Scale) * Symbol.Frame / Math.Sqrt(2) : null;

    /// <summary>The smallest height of a small x in the legal words, mm; null when there are none.</summary>
    internal double? XHeight => Legal.SelectMany(key => marks[key]).OfType<TextMark>()
        .Select(mark => (double?)(ruler.Measures(mark.Face).XHeight * mark.Points * TypePoint.Millimetres)).Min();

    /// <summary>True when red is printed nowhere but in pictograms.</summary>
    internal bool RedOnlyInPictograms => marks.Where(box => box.Key != SymbolsKey).SelectMany(box => box).All(mark => InkOf(mark) != Ink.Red);

    /// <summary>True when some text says so.</summary>
    internal bool Says(string words) => marks.SelectMany(box => box).OfType<TextMark>().Any(mark => mark.Text.Contains(words, StringComparison.OrdinalIgnoreCase));

    /// <summary>True when this box says so, on one line or broken over several.</summary>
    internal bool Says(string key, string words) =>
        Plain(string.Join(' ', marks[key].OfType<TextMark>().Select(mark => mark.Text))).Contains(Plain(words), StringComparison.OrdinalIgnoreCase);

    /// <summary>What stands on the jar card instead: what had no room, and of danger also what the design has no box for. The line that sends there is none of it.</summary>
    internal IEnumerable<string> OnCard =>
    [
        .. movedTexts.Where(m => m.Key != Pointer).SelectMany(m => m.Texts),
        .. Grave.Where(key => Wanted(key) && !Has(key) && !moved.Contains(key)).SelectMany(TextsOf),
    ];

    /// <summary>True when the maker's name is printed with something that can be a place; a telephone number or an address of mail is none.</summary>
    internal bool HasPlace => text.Words.GetValueOrDefault("owner") is { Count: > 1 } owner
        && Says("owner", owner[0])
        && owner[0].Replace(owner[^1], "", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries).Any(IsOfAPlace);

    private static bool IsOfAPlace(string word) => word.Count(char.IsLetter) > 1
        && !word.Contains('@', StringComparison.Ordinal)
        && !Reaching.Contains(word.TrimEnd('.', ':', ','), StringComparer.OrdinalIgnoreCase);

    private IEnumerable<string> TextsOf(string key) => (text.Words.GetValueOrDefault(key) ?? []).Take(1).Concat(text.Lists.GetValueOrDefault(key) ?? []);

    // A dot is not printed where the line breaks at it.
    private static string Plain(string words) => words.Replace($" {Paragraph.Between} ", " ", StringComparison.Ordinal);

    private IEnumerable<(double X, double Y, double Scale)> Pictograms => marks[SymbolsKey].OfType<PathMark>().Select(path => (path.X, path.Y, path.Scale)).Distinct();

    private static Ink? InkOf(Mark mark) => mark switch
    {
        TextMark words => words.Ink,
        BarMark bar => bar.Ink,
        PathMark path => path.Ink,
        _ => null,
    };

    private static IEnumerable<(string Name, string Key)> Keys(Box box) => box switch
    {
        StackBox stack => stack.Boxes.SelectMany(Keys),
        TextBox words => [(words.Frame.Name, words.Word)],
        ListBox list => [(list.Frame.Name, list.List)],
        SymbolsBox symbols => [(symbols.Frame.Name, symbols.Codes.Contains(PoisonWords.Sign) ? SkullKey : SymbolsKey)],
        _ => [],
    };
}
