namespace JarLabel.Operations.Steps;

/// <summary>The jars behind photographed or typed codes.</summary>
internal static class ScanStep
{
    private static readonly string[] Pictures = [".png", ".jpg", ".jpeg", ".webp", ".gif", ".bmp", ".heic", ".heif", ".avif", ".tif", ".tiff", ".pdf"];

    private static Input<string> What => field ??= Input.Of<string>("what", "Jar's number, or the text of a code", "1", (text, _) => text)
        .Help("text", "A photo of labels (photo.jpg), a jar's number (142-5), or - for codes typed one a line.").Hint("the number beside the code, such as 142-5").Argument();

    internal static Step Step => field ??= Step.OfShop("scan", "Scan a label", "The jar behind a photographed or typed code, and whether its label is still true.", [What], Do) with { Looks = true, TakesPhoto = true };

    private static Result<Outcome> Do(Values given)
    {
        if (!Codes(given.Get(What), given.Source).TryGet(out var codes, out var faults))
        {
            return faults;
        }

        var found = new ScannedCodes(given.Bench, codes);
        return found.Nothing ? Result<Outcome>.Failed(found.Faults) : new Outcome(ScanAnswer.Of(given.Bench, found, several: codes.Count > 1)) { Ways = found is { Jars.Count: 0, Supplies: [var one] } ? SupplySteps.Ways(one.Supply) : [] };
    }

    private static Result<IReadOnlyList<string>> Codes(string what, IValueSource source)
    {
        if (!source.IsAtTheMachine)
        {
            return Result<IReadOnlyList<string>>.Of([what]);
        }

        if (what == "-")
        {
            return source.Lines() is { Count: > 0 } lines ? Result<IReadOnlyList<string>>.Of(lines) : TypingProblems.NothingTyped();
        }

        return Pictures.Contains(Path.GetExtension(what), StringComparer.OrdinalIgnoreCase) || File.Exists(what)
            ? ScanJar.Photo(what).Then(found => Result<IReadOnlyList<string>>.Of(found))
            : Result<IReadOnlyList<string>>.Of([what]);
    }
}
