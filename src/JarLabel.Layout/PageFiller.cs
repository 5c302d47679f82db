using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Layout.Designs;
using JarLabel.Layout.Fitting;
using JarLabel.Layout.Marks;
using JarLabel.Layout.Sheets;

namespace JarLabel.Layout;

/// <summary>Fills pages with labels one page at a time, so that any number of labels takes the memory of one page. At the first label
/// with a problem it stops; the caller then throws the unfinished file away.</summary>
/// <param name="sheet">The stock.</param>
/// <param name="design">How every label looks.</param>
/// <param name="preflight">Checks each label before it counts.</param>
/// <param name="ruler">Measures text.</param>
public sealed class PageFiller(Sheet sheet, Design design, Preflight preflight, ITextRuler ruler)
{
    private readonly Paragraphs paragraphs = new(ruler);

    /// <summary>Why it stopped; empty when every label was placed. Complete only after the last page was taken.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>How many labels were placed.</summary>
    public int Placed { get; private set; }

    /// <summary>The pages, made as they are asked for.</summary>
    /// <param name="texts">The labels in order.</param>
    /// <param name="start">The first free place of the first page, from 1.</param>
    public IEnumerable<Page> Fill(IEnumerable<LabelText> texts, int start = 1)
    {
        ArgumentNullException.ThrowIfNull(texts);
        if (start < 1 || start > sheet.Places)
        {
            Problems = [LayoutProblems.NoSuchPlace(start, sheet.Id, sheet.Places)];
            yield break;
        }

        var place = start;
        var marks = new List<Mark>();
        foreach (var text in texts)
        {
            if (!TryPlace(text, sheet.AreaAt(place), marks))
                yield break;
            if (place++ < sheet.Places)
                continue;
            yield return PageOf(marks);
            (place, marks) = (1, []);
        }

        if (marks.Count > 0)
            yield return PageOf(marks);
    }

    private bool TryPlace(LabelText text, LabelArea area, List<Mark> marks)
    {
        if (!Composer.Place(text, design, area, paragraphs).Then(Checked).TryGet(out var label, out var problems))
        {
            Problems = problems;
            return false;
        }

        marks.AddRange(label.Marks);
        Placed++;
        return true;
    }

    private Result<PlacedLabel> Checked(PlacedLabel label)
    {
        var problems = preflight.Check(label, sheet.PaperWidth, sheet.PaperHeight);
        return problems.Count == 0 ? label : Result<PlacedLabel>.Failed(problems);
    }

    private Page PageOf(List<Mark> marks) => new(sheet.PaperWidth, sheet.PaperHeight, marks);
}
