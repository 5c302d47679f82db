namespace JarLabel.Operations.Typing;

/// <summary>Readers for what a shop settles once and labels then need: what could not be used then is refused at once.</summary>
public static class ShopWords
{
    /// <summary>The id of label stock that there is.</summary>
    public static Result<string> Sheet(Workbench bench, string text, string where) =>
        LabelComposer.Open(bench).Then(composer => Settled(composer.Stock(text, where), "sheet", text, composer.SheetIds)).Then<string>(sheet => sheet.Id);

    /// <summary>The id of a label design that there is.</summary>
    public static Result<string> Design(Workbench bench, string text, string where) =>
        LabelComposer.Open(bench).Then(composer => Settled(composer.Design(text, where), "design", text, composer.DesignIds)).Then<string>(design => design.Id);

    private static Result<T> Settled<T>(Result<T> found, string setting, string text, IReadOnlyCollection<string> known)
        where T : notnull => found.Ok ? found : Result<T>.Failed([.. found.Problems.Select(problem => OperationProblems.WithExample(problem, setting, Nearest.To(text, known) ?? known.First()))]);
}
