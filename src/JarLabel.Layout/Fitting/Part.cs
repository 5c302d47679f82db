namespace JarLabel.Layout.Fitting;

/// <summary>A box of the design together with what one label puts into it.</summary>
/// <param name="fit">What all parts share.</param>
/// <param name="frame">What every box has.</param>
internal abstract class Part(Fit fit, BoxFrame frame)
{
    internal Fit Fit => fit;

    internal BoxFrame Frame => frame;

    internal Part? Parent { get; set; }

    internal virtual IReadOnlyList<Part> Parts => [];

    /// <summary>False for rules and white, which mean nothing alone.</summary>
    internal virtual bool Speaks => true;

    /// <summary>How many of its things it could show; a box is one thing, a list has its sentences.</summary>
    internal virtual int Count => 1;

    /// <summary>How many must stay.</summary>
    internal virtual int Least => 0;

    /// <summary>How many of its things are left out for lack of room.</summary>
    internal int LeftOut { get; private set; }

    internal bool Shown => Count > LeftOut && (!frame.WhenMoved || fit.LeftOut > 0 || fit.CutShort);

    /// <summary>Everything that is not shown although the label has it.</summary>
    internal abstract IEnumerable<string> Moved { get; }

    /// <summary>All it would print.</summary>
    internal abstract IEnumerable<string> Texts { get; }

    internal bool LeaveOneOut()
    {
        if (Frame.Drop is null || Count - LeftOut <= Least)
            return false;
        LeftOut++;
        fit.LeftOut++;
        return true;
    }

    internal void TakeBack()
    {
        LeftOut--;
        fit.LeftOut--;
    }

    /// <summary>The width it would take if it could.</summary>
    internal double Wide() => frame.Width ?? NaturalWidth();

    /// <summary>The height it takes at a width; notes a fault when it does not fit.</summary>
    internal double High(double width)
    {
        var height = NaturalHeight(Math.Min(frame.Width ?? width, width));
        if (frame.Height is not { } given)
            return height;
        fit.NeedHeight(this, height, given);
        return given;
    }

    internal abstract void Draw(Area area, Ink ink, List<Mark> marks);

    protected abstract double NaturalWidth();

    protected abstract double NaturalHeight(double width);
}
