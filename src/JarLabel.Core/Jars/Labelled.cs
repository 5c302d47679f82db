namespace JarLabel.Core.Jars;

/// <summary>A label for the jar was written.</summary>
/// <param name="At">The moment.</param>
/// <param name="Revision">The revision the label speaks of.</param>
/// <param name="File">The file written, by its name in the shop's label folder or as the user gave it.</param>
/// <param name="Design">The design's id.</param>
/// <param name="Sheet">The sheet's id.</param>
/// <param name="Position">The place on the sheet, from 1.</param>
/// <param name="Payload">What its code says.</param>
public sealed record Labelled(DateTime At, int Revision, string File, string Design, string Sheet, int Position, string Payload) : JarEvent(At)
{
    /// <summary>SHA-256 of the file, 64 lower-case hexadecimal digits.</summary>
    public string? Sha256 { get; init; }

    /// <summary>How many were printed, when more than one; they run on from <see cref="Position"/>.</summary>
    public int? Copies { get; init; }
}
