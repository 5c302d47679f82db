namespace JarLabel.Store;

/// <summary>The words for the kinds of subject in the database and in the export. They never change once written.</summary>
internal static class SubjectWords
{
    internal static IReadOnlyDictionary<string, SubjectKind> Kinds { get; } = new Dictionary<string, SubjectKind>(StringComparer.Ordinal)
    {
        ["jar"] = SubjectKind.Jar,
        ["bag"] = SubjectKind.Bag,
        ["bottle"] = SubjectKind.Bottle,
        ["sheet"] = SubjectKind.Sheet,
    };

    /// <summary>What bears its number on a label.</summary>
    internal static IReadOnlyList<SubjectKind> OnGlass { get; } = [SubjectKind.Jar, SubjectKind.Bag, SubjectKind.Bottle];

    internal static string Of(SubjectKind kind) => kind switch
    {
        SubjectKind.Jar => "jar",
        SubjectKind.Bag => "bag",
        SubjectKind.Bottle => "bottle",
        SubjectKind.Sheet => "sheet",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, null),
    };
}
