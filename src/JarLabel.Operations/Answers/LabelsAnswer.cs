namespace JarLabel.Operations.Answers;

/// <summary>Many labels that were written into one file.</summary>
internal static class LabelsAnswer
{
    private const int MostNamed = 12;

    internal static Answer Of(Workbench bench, WrittenLabels labels)
    {
        var screen = Moved(new Screen().Title($"{CountWords.Of(labels.Labels, "label")} for {CountWords.Of(labels.Jars, "jar")} on {CountWords.Of(labels.Pages, "page")}{(bench.DryRun ? " would be printed" : "")}").Gap().Rows(Rows(bench, labels)), labels);
        return Answer.Of(
            bench.DryRun ? screen.InEarnest("writes") : screen.Next("sheet state"),
            tell => new LabelsAnswerJson(LabelsJson.Of(labels), tell(labels.Cautions)),
            c => c.LabelsAnswerJson,
            labels.Cautions);
    }

    /// <summary>Batches that a list mixed.</summary>
    internal static Answer Of(Workbench bench, MixedList mixed)
    {
        var jars = mixed.Jars.ToArray();
        Problem[] cautions = [.. mixed.Cautions, .. mixed.Labels?.Cautions ?? []];
        var screen = new Screen().Title($"{CountWords.Of(jars.Length, "jar")} {(bench.DryRun ? "would be mixed" : "mixed")}: {(jars.Length == 1 ? $"{jars[0]}" : $"{jars[0]} to {jars[^1]}")}");
        if (mixed.Labels is { } labels)
        {
            Moved(screen.Gap().Rows([(bench.DryRun ? "would be printed" : "printed", CountWords.Of(labels.Labels, "label") + " on " + CountWords.Of(labels.Pages, "page")), .. Rows(bench, labels)]), labels);
        }

        return Answer.Of(
            bench.DryRun ? screen.InEarnest() : screen.Next("shelf"),
            tell => new MixedListJson([.. jars.Select(jar => jar.ToString())], mixed.Labels is { } printed ? LabelsJson.Of(printed) : null, tell(cautions)),
            c => c.MixedListJson,
            cautions);
    }

    private static (string, string?)[] Rows(Workbench bench, WrittenLabels labels) =>
    [
        ("labels", labels.File),
        ("on", $"{labels.Sheet}, {Places(labels)}; print at actual size"),
        ("left out", labels.LeftOut.Count == 0 ? null : $"no longer on a shelf: {Named(labels.LeftOut)}"),
        (bench.DryRun ? "would be dated anew" : "dated anew", Why(labels)),
    ];

    private static string? Why(WrittenLabels labels)
    {
        int[] tests = [.. labels.Redated.Except(labels.ForFlakes)];
        string[] why = [.. tests.Length == 0 ? [] : (string[])[$"by this shop's drying tests: {Named(tests)}"], .. labels.ForFlakes.Count == 0 ? [] : (string[])[$"by what was found of their flakes: {Named(labels.ForFlakes)}"]];
        return why.Length == 0 ? null : string.Join("; ", why);
    }

    private static Screen Moved(Screen screen, WrittenLabels labels) => labels.WithMoved == 0 ? screen
        : labels.Design == Cards.Design ? screen.And(Cards.LeftOut, Message.Of($"on {labels.WithMoved} of the cards there was no room for everything; {Screen.Step("jar", ("jar", "N"))} tells all"))
        : screen.And("on the card", Message.Of($"{labels.WithMoved} of the labels had no room for everything; {Screen.Step("card", ("jar", "N"))} prints the rest"));

    private static string Places(WrittenLabels labels) => labels.First.Sheet == labels.Last.Sheet
        ? Say($"sheet {labels.First.Sheet}, {(labels.Labels == 1 ? "place" : "places")} {labels.First.Place}{(labels.Labels == 1 ? "" : Say($" to {labels.Last.Place}"))}")
        : Say($"from sheet {labels.First.Sheet}, place {labels.First.Place}, to sheet {labels.Last.Sheet}, place {labels.Last.Place}");

    private static string Named(IReadOnlyList<int> jars) =>
        string.Join(", ", jars.Take(MostNamed).Select(jar => Say($"{jar}"))) + (jars.Count > MostNamed ? Say($" and {jars.Count - MostNamed} more") : "");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>How the jar card is spoken of, on which whatever has no room elsewhere is printed.</summary>
internal static class Cards
{
    /// <summary>The id of its design.</summary>
    internal const string Design = Labelled.Card;

    /// <summary>The word before what has no room on a card itself.</summary>
    internal const string LeftOut = "not on it";
}

/// <summary>What <c>label</c> says of many labels.</summary>
internal sealed record LabelsAnswerJson(LabelsJson Labels, IReadOnlyList<Problem> Warnings);

/// <summary>What <c>mix --list</c> says: the new jars in the order of the rows, and their labels.</summary>
internal sealed record MixedListJson(IReadOnlyList<string> Jars, LabelsJson? Labels, IReadOnlyList<Problem> Warnings);
