namespace JarLabel.Operations.Steps;

/// <summary>Prints the wall notice for a solvent shelf.</summary>
internal static class NoticeStep
{
    private static Input<string?> Shelf => field ??= Shared.Shelf("The shelf it hangs over; else the shop's first.", "the shop's first").Change(one => one with { IsMore = false, MayStandAlone = true });

    private static Input<NoticePaper> Paper => field ??= Shared.Paper("a4 or letter, on its side; else a4 under clp, letter under osha.", NoticePaper.A4, NoticePaper.Letter);

    private static Input<Volume> Evaporate => field ??= Input.Or("evaporate", "Liquid that dries there at once", "250 mL", VolumeText.Read, NoticeRequest.UsualEvaporated).In(UsualUnits.Volumes)
        .Help("volume", "Liquid that dries there in one spell of work: \"250 mL\" (the default).").Hint("250 mL when left empty");

    private static Input<Duration> Over => field ??= Input.Or("over", "How long that takes", "1 h", TimeText.Read, NoticeRequest.UsualOver)
        .Help("time", "How long it takes to dry: \"1 h\" (the default).").Hint("1 h when left empty");

    private static Input<double> Distance => field ??= Input.Or("distance", "Read from, metres", "3", ValueReader.Number(0.5, 50, NoticeRequest.UsualDistance.Meters).Invoke, NoticeRequest.UsualDistance.Meters)
        .Help("metres", "From how many metres it is to be read: 3 (the default).").Hint("3 when left empty").More();

    private static Input<LabelChoice> Sheet => field ??= Input.Group<LabelChoice>([Paper], given => WriteNotice.Stock(given.Get(Paper)));

    internal static Step Step => field ??= Step.OfShop("notice", "Wall notice", "Print the wall notice for a solvent shelf: signs, what stands there, air, limits, what to do.",
        [Shelf, Sheet, Shared.WorkRoom, Evaporate, Over, Distance, Shared.LabelFile, Shared.Force, Shared.PrintTo], Do) with
    { Button = "Write the notice", WorksOut = true, NeedsNothing = true, Stock = Sheet };

    private static Result<Outcome> Do(Values given)
    {
        var request = new NoticeRequest(
            given.Get(Shelf),
            given.Get(Paper),
            Length.FromMeters(given.Get(Distance)),
            given.Get(Shared.WorkRoom),
            given.Get(Evaporate),
            given.Get(Over),
            given.Get(Shared.LabelFile));
        return WriteNotice.Do(given.Bench, request).Then<Outcome>(notice => new Outcome(NoticeAnswer.Of(given.Bench, notice)) { Files = [notice.File] });
    }
}
