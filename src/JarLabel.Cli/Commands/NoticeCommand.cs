using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Notices;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Labels;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Commands;

/// <summary><c>notice</c>: the wall notice for a solvent shelf.</summary>
internal static class NoticeCommand
{
    private static readonly Option<string> Shelf = new("--shelf") { Description = "The shelf it hangs over; else the shop's first.", HelpName = "name" };
    private static readonly Option<string> Paper = new("--paper") { Description = "a4 or letter, on its side; else a4 under clp, letter under osha.", HelpName = "paper" };
    private static readonly Option<string> Room = new("--room") { Description = "Air in the room: \"50 m3\" (the default), \"1800 cu ft\".", HelpName = "volume" };
    private static readonly Option<string> Evaporate = new("--evaporate") { Description = "Liquid that dries there in one spell of work: \"250 mL\" (the default).", HelpName = "volume" };
    private static readonly Option<string> Over = new("--over") { Description = "How long it takes to dry: \"1 h\" (the default).", HelpName = "time" };
    private static readonly Option<string> Distance = new("--distance") { Description = "From how many metres it is to be read: 3 (the default).", HelpName = "metres" };

    internal static Command Create(Runner runner) => runner.Runs(
        new Command("notice", "Print the wall notice for a solvent shelf: signs, what stands there, air, limits, what to do.") { Shelf, Paper, Room, Evaporate, Over, Distance, LabelCommand.Out, SharedOptions.Force, PrintTo.To },
        Run,
        (typed, session) => WriteNotice.Stock(Wanted(typed, session)));

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var request = new NoticeRequest(
            typed.Text(Shelf),
            Wanted(typed, session),
            Length.FromMeters(typed.Value(Distance, Words.Number(0.5, 50, NoticeRequest.UsualDistance.Meters)) ?? NoticeRequest.UsualDistance.Meters),
            typed.Value(Room, RoomText.Read) ?? NoticeRequest.UsualRoom,
            typed.Value(Evaporate, VolumeText.Read) ?? NoticeRequest.UsualEvaporated,
            typed.Value(Over, TimeText.Read) ?? NoticeRequest.UsualOver,
            LabelCommand.FileOf(typed));
        return typed.Then(() => WriteNotice.Do(session.Workbench, request).Then<Answer>(notice => Answer.Of(
            Show(notice, session), new NoticeAnswerJson(JsonOf(notice, session.Workbench.Rules, session.Workbench.Catalog), notice.Cautions), c => c.NoticeAnswerJson, notice.Cautions)));
    }

    private static NoticePaper Wanted(Typed typed, Session session) => DrawingOptions.Of(typed, Paper, session, NoticePaper.A4, NoticePaper.Letter);

    private static Screen Show(WrittenNotice notice, Session session) => new Screen()
        .Title($"Notice for shelf {notice.Shelf}").Gap()
        .Rows(
            ("file", notice.File),
            ("stands there", string.Create(CultureInfo.InvariantCulture, $"{notice.Stock.Liquids.Count} jar{(notice.Stock.Liquids.Count == 1 ? "" : "s")}, {BenchAmount.Both(Total(notice), session.Workbench.Metric)}")),
            ("signal word", notice.Stock.Signal.ToString()),
            ("read from", string.Create(CultureInfo.InvariantCulture, $"{notice.Request.Distance.Meters:0.#} m")),
            ("air", notice.Air is { PeakPpm: var peak, LimitPpm: { } limit } ? string.Create(CultureInfo.InvariantCulture, $"{peak:0} ppm at the most in {notice.Request.Room.CubicMeters:0.#} m³ (limit {limit:0} ppm); your own room: --room") : null))
        .Next("print at actual size, hang it at eye height, and print it again when the shelf changes");

    private static Volume Total(WrittenNotice notice) => Volume.FromMilliliters(notice.Stock.Liquids.Sum(l => l.Liquid.Milliliters));

    private static NoticeJson JsonOf(WrittenNotice notice, RuleSet rules, ShopCatalog catalog) => new(
        notice.File,
        notice.Sheet,
        notice.Shelf,
        notice.Stock.Liquids.Count,
        Total(notice).Milliliters,
        notice.Stock.Signal.ToString(),
        notice.Stock.Toxic,
        notice.Request.Distance.Meters,
        notice.Request.Room.CubicMeters,
        notice.Air?.PeakPpm,
        notice.Air?.LimitPpm,
        notice.Air?.LimitUnverified ?? false,
        notice.Air is { } air ? AirWords.Limits(air) : [],
        [.. notice.Stock.PassedOutsideCabinet(rules, catalog).Select(l => l.Id)],
        [.. notice.Stock.Liquids.SelectMany(l => l.Hazards.Unverified).Concat(notice.Air?.Unverified ?? []).Distinct()]);
}
