namespace JarLabel.Operations.Steps;

/// <summary>The shop's own cans of alcohol, as their safety data sheets state them.</summary>
internal static class CanSteps
{
    private const string Example = "ethanol=30-60,methanol=30-60";

    private static Input<string> Name => field ??= Input.Of("name", "What it is called here", "the green can", Shared.Printed(CanWords.LongestName)).Help("text", "What it is called here: \"the green can\".").Argument();

    private static Input<bool> ByVolume => field ??= Input.Flag("by-volume", "The percentages are by volume").Help("The percentages are by volume; else by weight, as data sheets give them.");

    private static Input<string?> Id => field ??= Input.Word("id", "The word for it in commands", "green-can").Help("word", "The word for it in commands; else one is made of its name.").More();

    private static Input<StatedContents> Contains => field ??= Input.Of<StatedContents>("contains", "Section 3 of its data sheet", Example, (bench, text, where) => ContentsText.Read(text, Measure.Weight, bench.Catalog, where))
        .Help("contents", $"Section 3 of its data sheet: \"{Example}\"; also <3, >=50, and rest for what the others leave.");

    private static Input<StatedContents> Sheet => field ??= Contains.Beside(ByVolume, (values, text, where) =>
        ContentsText.Read(text, values.Get(ByVolume) ? Measure.Volume : Measure.Weight, values.Bench.Catalog, where));

    internal static Step Add => field ??= Step.OfShop("can add", "New kind of can", $"Enter a can from its data sheet: can add \"the green can\" --contains \"{Example}\"", [Name, Sheet, Id],
        given => CanBook.Add(given.Bench, new CanRequest(given.Get(Name), given.Get(Sheet), given.Get(Id))).Then<Outcome>(can => new Outcome(CanAnswer.Of(given.Bench, can)))) with
    { Button = "Enter the can", WorksOut = true };

    internal static Step List => field ??= Step.OfShop("can list", "Cans of this shop", "The cans of this shop, with what follows from their data sheets.", [],
        given => CanBook.All(given.Bench).Then<Outcome>(cans => new Outcome(CanAnswer.Of(given.Bench, cans)))) with
    { Looks = true };
}
