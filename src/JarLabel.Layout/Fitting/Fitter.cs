namespace JarLabel.Layout.Fitting;

/// <summary>Finds sizes and wordings with which everything fits. It starts with every size at its smallest, leaves out what may be left
/// out until all fits, takes back what then has room, and at last lets the sizes climb.</summary>
/// <param name="fit">What all parts share.</param>
/// <param name="root">The outermost part.</param>
/// <param name="width">Width inside the inset, mm.</param>
/// <param name="height">Height inside the inset, mm.</param>
internal sealed class Fitter(Fit fit, Part root, double width, double height)
{
    private readonly List<Part> leftOut = [];

    /// <summary>Null when all fits; else what could not be helped.</summary>
    internal Fault? Run()
    {
        while (Attempt() is { } fault)
        {
            if (!Shorten(fault) && !LeaveOut(fault))
                return fault;
        }

        TakeBack();
        foreach (var ladder in fit.Ladders)
            ladder.Climb(() => Attempt() is null);
        return null;
    }

    private Fault? Attempt()
    {
        fit.Clear();
        if (root.Shown)
            fit.NeedHeight(root, root.High(width), height);
        return fit.Fault;
    }

    private static bool Shorten(Fault fault) => fault.Wide && fault.Part switch
    {
        TextPart text => text.Shorten(),
        ColumnsPart columns => Within(columns).OfType<TextPart>().Reverse().Any(text => text.Shown && text.Shorten()),
        _ => false,
    };

    // Leaves out, in the design's order, the first thing whose absence helps; what does not help is put back.
    private bool LeaveOut(Fault fault)
    {
        foreach (var part in Candidates(fault))
        {
            var taken = 0;
            while (part.Shown && part.LeaveOneOut())
            {
                taken++;
                var left = Attempt();
                if (left is null || left.Part != fault.Part || left.Missing < fault.Missing - Fit.Closeness)
                {
                    leftOut.AddRange(Enumerable.Repeat(part, taken));
                    return true;
                }
            }

            for (; taken > 0; taken--)
                part.TakeBack();
        }

        return false;
    }

    private static IEnumerable<Part> Candidates(Fault fault)
    {
        Part[] near = fault.Wide && Columns(fault.Part) is { Length: > 0 } columns ? columns : [fault.Part];
        return near.SelectMany(part => Droppable(Within(part))).Concat(Droppable(Above(near[^1]))).Distinct();
    }

    // What stands beside it is asked first, then what stands beside that: columns in columns.
    private static Part[] Columns(Part part) => [.. Above(part).Where(above => above is ColumnsPart)];

    private static IEnumerable<Part> Droppable(IEnumerable<Part> parts) => parts.Where(part => part.Frame.Drop is not null).OrderBy(part => part.Frame.Drop);

    private static IEnumerable<Part> Within(Part part) => part.Parts.SelectMany(Within).Prepend(part);

    private static IEnumerable<Part> Above(Part part)
    {
        for (var above = part.Parent; above is not null; above = above.Parent)
            yield return above;
    }

    private void TakeBack()
    {
        for (var index = leftOut.Count - 1; index >= 0; index--)
        {
            leftOut[index].TakeBack();
            if (Attempt() is not null)
                leftOut[index].LeaveOneOut();
        }
    }
}
