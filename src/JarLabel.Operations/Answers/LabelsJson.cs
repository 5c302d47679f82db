namespace JarLabel.Operations.Answers;

/// <summary>Many labels in one file.</summary>
internal sealed record LabelsJson(
    string File,
    string Design,
    string Sheet,
    int Jars,
    int Labels,
    int Pages,
    int FirstSheet,
    int FirstPosition,
    int LastSheet,
    int LastPosition,
    IReadOnlyList<int> LeftOut,
    int WithTextOnCard,
    IReadOnlyList<int> Redated)
{
    internal static LabelsJson Of(WrittenLabels labels) => new(
        labels.File,
        labels.Design,
        labels.Sheet,
        labels.Jars,
        labels.Labels,
        labels.Pages,
        labels.First.Sheet,
        labels.First.Place,
        labels.Last.Sheet,
        labels.Last.Place,
        labels.LeftOut,
        labels.WithMoved,
        labels.Redated);
}
