namespace JarLabel.Operations.Answers;

/// <summary>What is said of the label designs.</summary>
internal static class DesignAnswer
{
    internal static Answer Of(Workbench bench, IReadOnlyList<Design> designs, string? drawn) => Answer.Of(
        Show(bench, designs, drawn),
        new DesignsAnswerJson([.. designs.Select(d => new DesignJson(d.Id, d.Title, d.Width, d.Height))], drawn),
        c => c.DesignsAnswerJson);

    private static Screen Show(Workbench bench, IReadOnlyList<Design> designs, string? drawn)
    {
        var screen = new Screen().Title($"{designs.Count} designs").Gap()
            .Table(["id", " mm wide", " mm high", "what it is"], [.. designs.Select(Row)]);
        return drawn is null
            ? screen.Next("designs", ("out", "designs.pdf"))
            : screen.Gap().Rows((bench.DryRun ? "would be drawn at true size" : "drawn at true size", drawn)).Next(JarToName.Label(bench, ("design", designs[0].Id)));
    }

    private static string[] Row(Design design) => [design.Id, Figure(design.Width), Figure(design.Height), design.Title];

    private static string Figure(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}

/// <summary>A label design for a program.</summary>
internal sealed record DesignJson(string Id, string Title, double WidthMillimeters, double HeightMillimeters);

/// <summary>What <c>designs</c> says to a program.</summary>
/// <param name="Designs">The designs.</param>
/// <param name="File">The contact sheet; null where none was asked for.</param>
internal sealed record DesignsAnswerJson(IReadOnlyList<DesignJson> Designs, string? File);
