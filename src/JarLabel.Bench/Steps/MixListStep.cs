using JarLabel.Bench.Answers;
using JarLabel.Bench.Lists;
using JarLabel.Core;

namespace JarLabel.Bench.Steps;

/// <summary>Mixes a list of batches.</summary>
internal static class MixListStep
{
    internal static Input<string> List => field ??= Shared.File("list", "List of batches", "class.csv")
        .Help("file.csv", "Many batches from a CSV file, one row a jar; its columns are called like these options.").Change(one => one with { IsTypedOnly = true });

    private static Input<string?> Out => field ??= Shared.Out("The PDF to write with --list; else one in the shop's labels folder.");

    internal static Step Step => field ??= Step.OfShop("mix", "Mix a list of jars", "Mix a list of batches.", [Shared.NewLabel, List, Shared.Copies, Out, Shared.Force], Do);

    private static Result<Outcome> Do(Values given)
    {
        var (bench, copies) = (given.Bench, given.Get(Shared.Copies));
        var label = given.Get(Shared.NewLabel) is { } wanted ? wanted with { Copies = copies } : null;
        return MixList.Do(bench, given.Get(List), label, given.Get(Out), bench.Progress("labels")).Then<Outcome>(mixed => new Outcome(LabelsAnswer.Of(bench, mixed)));
    }
}
