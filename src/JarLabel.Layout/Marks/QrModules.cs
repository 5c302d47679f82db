using System.Collections;

namespace JarLabel.Layout.Marks;

/// <summary>The square of dark and light modules of one code, without its quiet zone.</summary>
public sealed class QrModules
{
    private readonly BitArray dark;

    /// <summary>Takes the modules row by row.</summary>
    /// <param name="payload">What the code says.</param>
    /// <param name="size">Modules per side: 21 to 177.</param>
    /// <param name="dark">size × size bits, row by row, true for a dark module.</param>
    public QrModules(string payload, int size, BitArray dark)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(dark.Length, size * size);
        Payload = payload;
        Size = size;
        this.dark = dark;
    }

    /// <summary>What the code says.</summary>
    public string Payload { get; }

    /// <summary>Modules per side.</summary>
    public int Size { get; }

    /// <summary>True when the module is dark.</summary>
    public bool this[int row, int column] => dark[(row * Size) + column];
}
