namespace JarLabel.Printing.Ipp;

/// <summary>A group of attributes, also the members of a collection.</summary>
/// <param name="Tag">What they are about.</param>
/// <param name="Attributes">In the order of the message.</param>
public sealed record IppGroup(IppTag Tag, IReadOnlyList<IppField> Attributes)
{
    /// <summary>All values of an attribute; none when it is not there or has no value.</summary>
    public IReadOnlyList<IppValue> All(string name) =>
        [.. Attributes.Where(a => a.Name == name).SelectMany(a => a.Values).Where(v => v.Tag is not (IppTag.Unsupported or IppTag.Unknown or IppTag.NoValue))];

    /// <summary>The first value of an attribute, or null.</summary>
    public IppValue? First(string name) => All(name) is [var first, ..] ? first : null;

    /// <summary>All values that are words.</summary>
    public IReadOnlyList<string> Words(string name) => [.. All(name).Select(v => v.Text).OfType<string>()];

    /// <summary>The first value as a word, or null.</summary>
    public string? Word(string name) => First(name)?.Text;

    /// <summary>The first value as a number, or null.</summary>
    public int? Number(string name) => First(name)?.Number;
}
