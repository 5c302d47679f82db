namespace JarLabel.Tests.Layout;

/// <summary>A label's marks as lines of text, hundredths of a millimetre kept, so that a changed layout shows as a changed line.</summary>
internal static class MarkText
{
    internal static IEnumerable<string> Of(Result<PlacedLabel> result)
    {
        if (!result.TryGet(out var label, out var problems))
            return problems.Select(problem => $"{problem.Code} {problem.Where}: {problem.Message}");
        return [.. label.Marks.Select(Line), .. label.Moved.Select(moved => $"moved {moved.Box}: {string.Join(" / ", moved.Texts)}")];
    }

    private static string Line(Mark mark) => mark switch
    {
        TextMark text => Say($"text {text.Box} {text.X:0.00} {text.Baseline:0.00} {text.Points:0.##}pt {text.Face} {text.Ink} {text.Text}"),
        BarMark bar => Say($"bar {bar.Box} {bar.X:0.00} {bar.Y:0.00} {bar.Width:0.00}x{bar.Height:0.00} {bar.Ink}"),
        PathMark path => Say($"path {path.Box} {path.X:0.00} {path.Y:0.00} x{path.Scale:0.0000} {path.Ink} {path.Data.Length} characters"),
        QrMark code => Say($"code {code.Box} {code.X:0.00} {code.Y:0.00} {code.Modules.Size} modules of {code.Module:0.0000} {code.Modules.Payload.ReplaceLineEndings(" | ")}"),
        _ => throw new NotSupportedException(),
    };

    private static string Say(FormattableString line) => line.ToString(CultureInfo.InvariantCulture);
}
