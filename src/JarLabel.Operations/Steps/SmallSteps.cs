namespace JarLabel.Operations.Steps;

/// <summary>Steps of a jar that want to know a thing or two.</summary>
internal static class SmallSteps
{
    private static Input<string> Text => field ??= Input.Of("text", "What there is to say", "strained twice", Shared.Printed(500)).Help("text", "What there is to say.").Argument();

    internal static Step Note => field ??= Step.OnJar("note", "Note", "Write something down about a jar.", [Text],
        given => NoteJar.Do(given.Bench, Step.Jar(given), given.Get(Text))) with
    { Button = "Write it down" };

    private static Input<string> Shelf => field ??= Input.Of("shelf", "To the shelf", "main", (Reader<string>)ValueReader.TextUpTo(40).Invoke).Help("name", "The shelf it goes to.").Alone()
        .Choices(Choose.Shelves())
        .Change(one => one with { First = jar => jar.Shelf });

    internal static Step Move => field ??= Step.OnJar("move", "Move", "Put a jar on another shelf; on a warmer one its use-by comes sooner, on a cooler one later, and it gets a new label.", [Shelf, Shared.NewLabel],
        given => MoveJar.Do(given.Bench, Step.Jar(given), given.Get(Shelf), given.Get(Shared.NewLabel)));

    private static Input<string?> Why => field ??= Input.Optional("why", "Why", "stays tacky", Shared.Printed(120)).Help("text", "Why: \"stays tacky\".");

    internal static Step Discard => field ??= Step.OnJar("discard", "Discard", "Take a jar off the shelf for good.", [Why],
        given => DiscardJar.Do(given.Bench, Step.Jar(given), given.Get(Why))) with
    {
        Button = "Discard the jar",
        IsAskedFor = (jar, _) => jar.FailedOn is not null,
        IsSeldom = true,
        Says = "Takes the jar off the shelf for good. What is left in it is waste that burns: hand it in at the hazardous-waste point as your local rules say, never into the drain.",
    };

    internal static Step Undo => field ??= Step.OnJar("undo", "Undo", "Take back the last thing recorded of a jar; nothing is erased, the taking back is recorded too.", [Shared.NewLabel],
        given => UndoLast.Do(given.Bench, Step.Jar(given), given.Get(Shared.NewLabel))) with
    {
        Button = "Take back the last step",
        IsSeldom = true,
        TakesGone = true,
        Says = "Takes back the last thing recorded of this jar, by a new entry; nothing is erased.",
        Hinders = given => given.TryRead(Shared.Jar, out var number) ? LedgerAccess.Jar(given.Bench, number).Then(history => history.Life.Undo(given.Bench.Now)).Problems : [],
        WorksOut = true,
        NeedsNothing = true,
    };
}
