namespace JarLabel.Tests.Layout;

/// <summary>Our own layouts, and small files for tests.</summary>
internal static class LayoutFiles
{
    internal static LayoutLibrary Ours { get; } = new();

    internal static Sheet Sheet(string id) => Ours.Sheet(id).Require();

    internal static Design Design(string id) => Ours.Design(id).Require();

    /// <summary>A design of one box in one voice of 10 or 8 points, 50 x 30 mm with 2 mm inset, so 46 x 26 inside.</summary>
    internal static Result<Design> DesignOf(string box) => DesignReader.Read("own.json", Encoding.UTF8.GetBytes($$"""
        {
          "id": "own", "title": "own", "shape": "rectangle", "width": 50, "height": 30, "inset": 2, "source": "practice",
          "voices": [{ "name": "say", "face": "regular", "sizes": [10, 8] }],
          "box": {{box}}
        }
        """));

    internal static LabelArea Area(double width = 50, double height = 30) => new(LabelShape.Rectangle, 0, 0, width, height, 300);
}
