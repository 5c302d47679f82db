namespace JarLabel.Layout;

/// <summary>Fills pages with labels one page at a time, so that any number of labels takes the memory of one page. After the first label
/// with a problem it makes no more pages, but goes on looking, so that all problems are told at once; the caller then throws the unfinished
/// file away.</summary>
/// <param name="sheet">The stock.</param>
/// <param name="design">How every label looks.</param>
/// <param name="preflight">Checks each label before it counts.</param>
/// <param name="ruler">Measures text.</param>
public sealed class PageFiller(Sheet sheet, Design design, Preflight preflight, ITextRuler ruler)
{
    /// <summary>More labels with a problem than this are not looked for.</summary>
    public const int MostProblems = 20;

    private readonly Paragraphs paragraphs = new(ruler);
    private readonly List<Problem> problems = [];

    /// <summary>Why there is nothing to print; empty when every label was placed. Complete only after the last page was taken.</summary>
    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>How many labels were placed.</summary>
    public int Placed { get; private set; }

    /// <summary>How many of them had no room for everything.</summary>
    public int WithMoved { get; private set; }

    /// <summary>The pages, made as they are asked for, with places that follow each other.</summary>
    /// <param name="texts">The labels in order.</param>
    /// <param name="start">The first free place of the first page, from 1.</param>
    public IEnumerable<Page> Fill(IEnumerable<LabelText> texts, int start = 1)
    {
        if (start < 1 || start > sheet.Places)
        {
            problems.Add(LayoutProblems.NoSuchPlace(start, sheet.Id, sheet.Places));
            return [];
        }

        return Fill(texts.Select((text, i) => new Placement(text, (start - 1 + i) / sheet.Places, ((start - 1 + i) % sheet.Places) + 1)));
    }

    /// <summary>The pages, made as they are asked for.</summary>
    /// <param name="labels">The labels, page by page.</param>
    public IEnumerable<Page> Fill(IEnumerable<Placement> labels)
    {
        var page = 0;
        var marks = new List<Mark>();
        foreach (var label in labels)
        {
            if (label.Page != page && marks.Count > 0 && problems.Count == 0)
            {
                yield return sheet.PageOf(marks);
                marks = [];
            }

            page = label.Page;
            Place(label, marks);
            if (problems.Count >= MostProblems)
                yield break;
        }

        if (marks.Count > 0 && problems.Count == 0)
            yield return sheet.PageOf(marks);
    }

    private void Place(Placement wanted, List<Mark> marks)
    {
        if (!Composer.Place(wanted.Text, design, sheet.AreaAt(wanted.Place), paragraphs).Then(Checked).TryGet(out var label, out var faults))
        {
            problems.AddRange(faults.Select(fault => wanted.Name is null ? fault : fault with { Where = $"{wanted.Name}, {fault.Where}" }));
            return;
        }

        if (problems.Count > 0)
            return;
        marks.AddRange(label.Marks);
        Placed++;
        WithMoved += label.Moved.Count > 0 ? 1 : 0;
    }

    private Result<PlacedLabel> Checked(PlacedLabel label)
    {
        var found = preflight.Check(label, sheet.PaperWidth, sheet.PaperHeight);
        return found.Count == 0 ? label : Result<PlacedLabel>.Failed(found);
    }
}

/// <summary>One label on its way to its place.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Page">The page; labels of one page follow each other.</param>
/// <param name="Place">The place on it, from 1.</param>
/// <param name="Name">Whose label it is, for messages; null says only which box.</param>
public readonly record struct Placement(LabelText Text, int Page, int Place, string? Name = null);
