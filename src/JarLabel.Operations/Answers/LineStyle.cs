namespace JarLabel.Operations.Answers;

/// <summary>The few kinds of line there are.</summary>
internal enum LineStyle
{
    /// <summary>A sentence.</summary>
    Plain,

    /// <summary>The first line.</summary>
    Title,

    /// <summary>A row of a list or a table.</summary>
    Row,

    /// <summary>A row about something that is to be seen to.</summary>
    Soon,

    /// <summary>A row about something that is over.</summary>
    Over,

    /// <summary>The head of a table.</summary>
    Header,

    /// <summary>A caution.</summary>
    Caution,

    /// <summary>The next useful command.</summary>
    Next,
}
