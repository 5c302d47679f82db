using JarLabel.Bench.Changing;
using JarLabel.Bench.Labels;
using JarLabel.Bench.Typing;

namespace JarLabel.Web.Forms;

/// <summary>The steps that need a field or two.</summary>
internal static class SmallForms
{
    internal static BenchForm Use { get; } = new(
        "use",
        "Use",
        "Record it",
        (_, _) => [new("VOLUME", "How much", "100 mL, 4 fl oz, or all"), new("--job", "What for", "viola top")],
        (bench, jar, entry) =>
        {
            var amount = entry.Needed("VOLUME", "\"100 mL\"", TakenText.Read);
            var job = entry.Fact("--job", Words.PrintedUpTo(120));
            return entry.Then(() => UseJar.Do(bench, jar, amount.Volume, job));
        });

    internal static BenchForm Note { get; } = new(
        "note",
        "Note",
        "Write it down",
        (_, _) => [new("TEXT", "What there is to say")],
        (bench, jar, entry) =>
        {
            var text = entry.Needed("TEXT", "\"strained twice\"", Words.PrintedUpTo(500));
            return entry.Then(() => NoteJar.Do(bench, jar, text));
        });

    internal static BenchForm Move { get; } = new(
        "move",
        "Move",
        "Record it",
        (bench, jar) =>
        [
            new("--shelf", "To the shelf") { Choices = [.. bench.Settings.Shelves.Select(shelf => (shelf.Name, shelf.Name))], First = jar?.Shelf },
            .. SharedFields.Label(bench),
        ],
        (bench, jar, entry) =>
        {
            var shelf = entry.Needed("--shelf", bench.Settings.Shelves[0].Name, Words.TextUpTo(40));
            var label = SharedFields.LabelOf(entry);
            return entry.Then(() => MoveJar.Do(bench, jar, shelf, label));
        });

    internal static BenchForm Label { get; } = new(
        "label",
        "Label",
        "Write the label",
        (bench, _) => SharedFields.LabelChoice(bench, seldom: false),
        (bench, jar, entry) =>
        {
            var choice = SharedFields.LabelChoiceOf(entry);
            return entry.Then(() => LabelJar.Do(bench, jar, choice, null));
        })
    { Says = "The label again, as the jar is now.", WorksOut = true, NeedsNothing = true };

    internal static BenchForm Discard { get; } = new(
        "discard",
        "Discard",
        "Discard the jar",
        (_, _) => [new("--why", "Why", "stays tacky")],
        (bench, jar, entry) =>
        {
            var why = entry.Fact("--why", Words.PrintedUpTo(120));
            return entry.Then(() => DiscardJar.Do(bench, jar, why));
        })
    { Says = "Takes the jar off the shelf for good. What is left in it is waste that burns: hand it in as your local rules say, not into the drain." };

    internal static BenchForm Undo { get; } = new(
        "undo",
        "Undo",
        "Take back the last step",
        (bench, _) => SharedFields.Label(bench),
        (bench, jar, entry) =>
        {
            var label = SharedFields.LabelOf(entry);
            return entry.Then(() => UndoLast.Do(bench, jar, label));
        })
    { Says = "Takes back the last thing recorded of this jar, by a new entry; nothing is erased.", WorksOut = true, NeedsNothing = true };
}
