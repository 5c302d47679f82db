namespace JarLabel.Layout;

/// <summary>Puts a label's words into a design on a piece of stock.</summary>
public static class Composer
{
    private const int MostDotsLess = 2;

    /// <summary>The marks of one label, or why it does not fit and which box is to blame.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="design">How it looks.</param>
    /// <param name="area">Where it lies, from <see cref="Sheet.AreaAt"/>.</param>
    /// <param name="ruler">Measures text as the renderer draws it.</param>
    public static Result<PlacedLabel> Place(LabelText text, Design design, LabelArea area, ITextRuler ruler) =>
        Place(text, design, area, new Paragraphs(ruler));

    internal static Result<PlacedLabel> Place(LabelText text, Design design, LabelArea area, Paragraphs paragraphs)
    {
        if (!design.Suits(area))
            return LayoutProblems.DesignDoesNotSuit(design, area);
        if (Unprintable(text, design) is { } problem)
            return problem;
        return FittedOrPinched(text, design, area, paragraphs);
    }

    // A figure such as 0.53 is wider than any fraction; only where it has no room at all is it made smaller than the design wants it.
    private static Result<PlacedLabel> FittedOrPinched(LabelText text, Design design, LabelArea area, Paragraphs paragraphs)
    {
        var whole = Fitted(text, design, area, paragraphs);
        return whole.Ok ? whole : design.Pinched().Select(pinched => Fitted(text, pinched, area, paragraphs)).FirstOrDefault(fitted => fitted.Ok, whole);
    }

    private static Problem? Unprintable(LabelText text, Design design)
    {
        if (text.Code is { } code && QrEncoder.IsTooLong(code))
            return LayoutProblems.PayloadTooLong(design.Id, code.Length);
        var unknown = text.Pictograms.FirstOrDefault(symbol => Symbol.Find(symbol) is null);
        return unknown is null ? null : LayoutProblems.UnknownSymbol(design.Id, unknown, Symbol.All.Keys);
    }

    // In black only, small letters are set in a weight that printer draws surely, unless a word would have no room for it: words matter more.
    private static Result<PlacedLabel> Fitted(LabelText text, Design design, LabelArea area, Paragraphs paragraphs)
    {
        var own = Fitted(text, design, area, paragraphs, false);
        return area.BlackOnly && Fitted(text, design, area, paragraphs, true) is { Ok: true } sure && Moved(sure) <= Moved(own) ? sure : own;
    }

    // A code with larger modules is read from farther away; it is made smaller only where something would have no room otherwise.
    private static Result<PlacedLabel> Fitted(LabelText text, Design design, LabelArea area, Paragraphs paragraphs, bool sure)
    {
        var code = text.Code is { } payload ? QrEncoder.Encode(payload) : null;
        var best = Fitted(new Fit(text, paragraphs, code, area, 0, sure), design, area);
        for (var dotsLess = 1; code is not null && dotsLess <= MostDotsLess && Gone(best) > 0; dotsLess++)
        {
            var smaller = Fitted(new Fit(text, paragraphs, code, area, dotsLess, sure), design, area);
            if (Gone(smaller) < Gone(best))
                best = smaller;
        }

        return best;
    }

    private static int Gone(Result<PlacedLabel> result) => result.TryGet(out var label, out _)
        ? label.Moved.Count(moved => !label.Marks.Any(mark => mark.Box == moved.Box))
        : int.MaxValue;

    private static int Moved(Result<PlacedLabel> result) => result.TryGet(out var label, out _) ? label.Moved.Sum(moved => moved.Texts.Count) : int.MaxValue;

    private static Result<PlacedLabel> Fitted(Fit fit, Design design, LabelArea area)
    {
        var inside = new Area(area.X, area.Y, area.Width, area.Height).Shrunk(design.Inset);
        var root = new PartBuilder(fit, design).Build();
        if (new Fitter(fit, root, inside.Width, inside.Height).Run() is { } fault)
            return Told(design, fault);
        var marks = new List<Mark>();
        if (root.Shown)
            root.Draw(inside, Ink.Black, marks);
        return new PlacedLabel(design, area, area.BlackOnly ? [.. marks.Select(mark => OneBit.Of(mark, area.Dpi))] : marks, [.. MovedFrom(root)]);
    }

    private static Problem Told(Design design, Fault fault)
    {
        var where = $"{design.Id}/{fault.Part.Frame.Name}";
        return fault.Wide
            ? LayoutProblems.TooWide(where, fault.Text, fault.Needs, fault.Has)
            : LayoutProblems.TooHigh(where, fault.Needs, fault.Has);
    }

    private static IEnumerable<MovedTexts> MovedFrom(Part part)
    {
        var own = part.Moved.ToList();
        if (own.Count > 0)
            return [new MovedTexts(part.Frame.Name, own)];
        return part.Parts.SelectMany(MovedFrom);
    }
}

/// <summary>What a label had no room for and the jar card shows instead.</summary>
/// <param name="Box">The box it would have stood in.</param>
/// <param name="Texts">The wordings.</param>
public sealed record MovedTexts(string Box, IReadOnlyList<string> Texts);
