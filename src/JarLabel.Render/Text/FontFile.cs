namespace JarLabel.Render.Text;

/// <summary>The bytes of the family's three font files, embedded in this assembly. A font is never looked up by name: a machine
/// without it would silently draw another one.</summary>
/// <param name="Address">Where they stand in memory, for the life of the process.</param>
/// <param name="Length">How many there are.</param>
internal readonly record struct FontFile(nint Address, int Length)
{
    /// <summary>The bytes where the assembly itself holds them: copies would cost a label a tenth of its start-up.</summary>
    internal static unsafe FontFile Of(Face face)
    {
        using var stream = Open(face);
        return new FontFile((nint)stream.PositionPointer, checked((int)stream.Length));
    }

    private static UnmanagedMemoryStream Open(Face face) =>
        typeof(FontFile).Assembly.GetManifestResourceStream($"fonts/IBMPlexSansCondensed_{Weight(face)}.ttf") as UnmanagedMemoryStream
        ?? throw new InvalidOperationException($"The font of {face} is not embedded.");

    private static string Weight(Face face) => face switch
    {
        Face.Regular => "400Regular",
        Face.SemiBold => "600SemiBold",
        Face.Bold => "700Bold",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "Not a weight of the family."),
    };
}
