using UnitsNet;
namespace JarLabel.Layout.Rules;

/// <summary>The sizes that European rules ask for by the capacity of the package: CLP Annex I 1.2.1.4 table 1.3, and the height of a small x
/// of Regulation (EU) 2024/2865, a duty from 2028. All in mm.</summary>
/// <param name="UpToLiters">The largest capacity of the row.</param>
/// <param name="Short">The label's shorter side, "if possible" up to 3 L.</param>
/// <param name="Long">The label's longer side.</param>
/// <param name="LeastPictogramSide">One side of the square that stands on its point.</param>
/// <param name="PictogramSide">The same "if possible" up to 3 L: a fifteenth of the label's least area.</param>
/// <param name="XHeight">Height of a small x.</param>
internal sealed record CapacitySizes(double UpToLiters, double Short, double Long, double LeastPictogramSide, double PictogramSide, double XHeight)
{
    private static readonly CapacitySizes[] Rows =
    [
        new(0.5, 52, 74, 10, 16, 1.2),
        new(3, 52, 74, 10, 16, 1.4),
        new(50, 74, 105, 23, 23, 1.8),
        new(500, 105, 148, 32, 32, 2.0),
        new(double.MaxValue, 148, 210, 46, 46, 2.0),
    ];

    /// <summary>The row of a capacity; where nobody said it, that of up to 3 L, the jars of a bench.</summary>
    internal static CapacitySizes For(Volume? capacity) => Rows.First(row => (capacity?.Liters ?? 3) <= row.UpToLiters);
}
