using JarLabel.Store.Sheets;

namespace JarLabel.Bench.Answers;

/// <summary>A sheet in use for a program; places are counted from 1 in reading order.</summary>
internal sealed record SheetInUseJson(int Number, string Stock, int Places, IReadOnlyList<int> Taken, IReadOnlyList<int> Free, bool Open)
{
    internal static SheetInUseJson Of(SheetInUse sheet) => new(sheet.Number, sheet.Stock, sheet.Places, [.. sheet.Taken.Order()], [.. sheet.Free], sheet.IsOpen);
}
