using JarLabel.Layout.Sheets;

namespace JarLabel.Bench.Answers;

/// <summary>Label stock for a program.</summary>
internal sealed record SheetJson(string Id, string Title, int Places, double WidthMillimeters, double HeightMillimeters, double PaperWidthMillimeters, double PaperHeightMillimeters, string Design)
{
    internal static SheetJson Of(Sheet sheet) => new(sheet.Id, sheet.Title, sheet.Places, sheet.Width, sheet.Height, sheet.PaperWidth, sheet.PaperHeight, sheet.Design);
}
