namespace JarLabel.Store;

/// <summary>One numbered thing the ledger remembers: jar 142, bag 3. Numbers start at 1 for each kind and are never used again.
/// <c>default</c> is not a valid subject.</summary>
public readonly record struct Subject(SubjectKind Kind, int Number)
{
    /// <summary>A jar by its number, without the check digit.</summary>
    public static Subject Jar(int number) => new(SubjectKind.Jar, number);

    /// <summary>A bag of flakes by its number.</summary>
    public static Subject Bag(int number) => new(SubjectKind.Bag, number);

    /// <summary>A bottle of solvent by its number.</summary>
    public static Subject Bottle(int number) => new(SubjectKind.Bottle, number);

    /// <summary>A sheet of label stock by its number.</summary>
    public static Subject Sheet(int number) => new(SubjectKind.Sheet, number);

    /// <summary><c>jar 142</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{SubjectWords.Of(Kind)} {Number}");
}
