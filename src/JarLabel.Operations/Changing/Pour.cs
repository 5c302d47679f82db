namespace JarLabel.Operations.Changing;

/// <summary>What goes from one jar into a new one.</summary>
/// <param name="From">The jar it comes from.</param>
/// <param name="Jar">That jar before.</param>
/// <param name="Taken">What goes.</param>
internal sealed record Pour(Recorder From, Jar Jar, Contents Taken)
{
    /// <summary>Works out what goes; the jar must be on its shelf and hold so much.</summary>
    internal static Result<Pour> Of(Workbench bench, Recorder from, Volume? amount, string where) =>
        from.InTime(bench).Then(_ => JarChange.OnShelf(from)).Then(_ => from.Marked(bench)).Then(history => history.Jar.Take(amount, where).Then<Pour>(taken => new Pour(from, history.Jar, taken)));

    /// <summary>The dates that what goes has on the other shelf.</summary>
    internal Result<KeepingDates> DatesOn(Workbench bench, Store.Shops.Shelf shelf) => From.History.Then(history => ShelfMoves.DatesOn(bench, From.Step, history, shelf));

    /// <summary>True when nothing stays behind.</summary>
    internal bool IsAll => Jar.Contents.Without(Taken) is { IsEmpty: true };

    /// <summary>What should be known of it before it goes anywhere.</summary>
    internal IReadOnlyList<Problem> Cautions(Workbench bench) => BatchCautions.OfState(Jar, bench.Now);

    /// <summary>Records at the jar it comes from that it is gone.</summary>
    internal Result<JarHistory> Out(Workbench bench, JarNumber to) => From.Append(new PouredOut(bench.Now, Taken, to));

    /// <summary>The container, when there is enough for a jar of its own and all of it fits with head space.</summary>
    internal static Result<Container> Fits(Container container, Contents contents) => Measurable.Demand(contents).Then(_ =>
        container.Holds is { } holds ? ContainerFit.Check(contents.Liquid, holds).Then<Container>(_ => container) : container);
}
