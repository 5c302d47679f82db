using JarLabel.Operations.Shops;

namespace JarLabel.Operations.Steps;

/// <summary>Everything that a shop settles, at once: for a new shop, and whenever something changes. What is left as it is stays as it is.</summary>
internal static class SetupStep
{
    private const string ShelfField = "shelf", PrinterField = "printer";

    /// <summary>The stock that is had in most shops, by paper.</summary>
    private static readonly string[] CommonStock = ["a4-2x4-99.1x67.7", "a4-2x7-99.1x38.1", "letter-2x5-101.6x50.8", "roll-62x29"];

    private static Input<string?> Name => field ??= One("name", "The shop's name", "Alder Lane Lutherie", settings => settings.Name).Help("text", "The shop's name, on every label.").Hint("as on the labels");

    private static Input<string?> Rules => field ??= One("rules", "Whose hazard rules", "clp", settings => settings.Rules.ToString().ToLowerInvariant())
        .Help("rules", "Labelling rules: osha or clp.").Choices(_ => SettingWords.Rules).Tapped();

    private static Input<string?> Units => field ??= One("units", "Which amounts come first", "metric", settings => settings.Metric ? "metric" : "us")
        .Help("units", "Amounts on screen: us or metric first.").Choices(_ => SettingWords.Units).Tapped();

    private static Input<string?> Stock => field ??= One("sheet", "What you print labels on", "a4-2x4-99.1x67.7", settings => settings.Sheet)
        .Help("id", "The label stock (\"jarlabel sheets\" lists it).").Choices(AllStock).Usual(TappedStock);

    private static Input<string?> Poison => field ??= One("poison-center", "Telephone of your poison center", "+49 30 19240", settings => settings.PoisonCenter)
        .Help("number", "The telephone of the poison center, as labels print it.").Hint("printed beside what is poisonous; empty: 1-800-222-1222 in the US, 112 in Europe");

    private static Input<string?> Contact => field ??= One("contact", "Whom to ask", "ask Anna, 555 0134", settings => settings.Contact).Help("text", "Whom to ask about a jar, on every label.").Hint("a name, a telephone; on every label");

    private static Input<string?> Address => field ??= One("base-url", "Where the codes on labels lead", "http://192.168.1.20:5080", settings => settings.BaseUrl?.Text)
        .Help("address", "The address of the shop's pages, where the codes on labels lead.").Hint("the address by which telephones open these pages; empty: the codes need no network")
        .Usual(bench => bench.Came is { } came && ShopAddress.Read(came, "base-url").TryGet(out var address, out _) ? [(address.Text, address.Text)] : []);

    private static Input<SettingLines?> Shelves => field ??= Lines(ShelfField, "Shelves, and how warm they are", "cellar 14 C", ShelfLines.Of, ShelfLines.Shelves)
        .Help("shelf", "A shelf and how warm it is: \"cellar 14 C\"; \"cellar none\" takes an empty one away.").Hint("one a line, such as cellar 14 C or bench 68 F; new jars go on the first; without its line an empty shelf is taken away");

    private static Input<string?> Design => field ??= One("design", "Label design", "wide", settings => settings.Design).Help("id", "The label design (\"jarlabel designs\" lists them).").More()
        .Choices(bench => LabelComposer.Open(bench).Then(composer => composer.Designs()).TryGet(out var designs, out _)
            ? [("", "The usual one for the stock"), .. designs.Where(design => JarDesigns.Suits(design.Id)).Select(design => (design.Id, design.Title))] : []);

    private static Input<string?> Aging => field ??= One("aging", "How many times faster jars age when 10 °C warmer", "2", settings => Figure(settings.AgingPerTenKelvin))
        .Help("times", "How many times faster a jar ages when it is 10 °C warmer: 1.5 to 3; else learned from tests.").Hint("1.5 to 3; empty: learned from the shop's tests").More();

    private static Input<string?> StillGood => field ??= One("still-good", "Jars still good on their use-by, %", "90", settings => Figure(100 * settings.Learning.StillGood))
        .Help("percent", "How many of a hundred jars should still dry hard on their use-by: 90 (the default).").Hint("of a hundred jars, how many should still dry hard that day: 90").More();

    private static Input<string?> Spread => field ??= One("keeping-spread", "How far published keeping times may be off, times", "2", settings => Figure(settings.Learning.Spread))
        .Help("times", "By how much published keeping times may be off, times: 2 (the default).").Hint("2: half as long, or twice as long").More();

    private static Input<SettingLines?> Printers => field ??= Lines(PrinterField, "Printers of the network", "bench=ipp://192.168.1.30/ipp/print", ShelfLines.PrintersOf, ShelfLines.Printers)
        .Help("printer", "A printer and its address: bench=ipp://192.168.1.30/ipp/print; bench=none forgets it.").Hint("one a line, name = address, such as bench=ipp://192.168.1.30/ipp/print").More();

    private static IReadOnlyList<Input<string?>> Singly => field ??= [Name, Rules, Units, Stock, Poison, Contact, Address, Design, Aging, StillGood, Spread];

    internal static Step Step => field ??= Step.OfShop("shop setup", "Set up your shop", "Settle at once what a shop settles, --rules and --units too; what is not said stays.", [Name, Rules, Units, Stock, Poison, Contact, Address, Shelves, Design, Aging, StillGood, Spread, Printers], Do) with
    {
        Button = "Keep these settings",
        Says = "What is settled once, and printed on every label. All of it can be left for later, and changed here.",
        Example = [new("name", "Alder Lane Lutherie")],
    };

    private static Result<Outcome> Do(Values given)
    {
        var bench = given.Bench;
        var isNew = !File.Exists(bench.Folder.Ledger);
        var done = HasChanges(given) || !File.Exists(bench.Folder.Settings)
            ? ShopSteps.Keep(bench, settings => Changed(given, settings))
            : new Outcome(ShopAnswer.Of(bench, bench.Settings, bench.Settings, [])) { IsNothing = true };
        return done.Then<Outcome>(outcome =>
        {
            if (isNew)
            {
                outcome.Answer.Screen.Gap().Title("What comes next").ToDo(Begin(bench));
            }

            return outcome with { Ways = [new Remedy("shop show")] };
        });
    }

    /// <summary>What a new shop does next.</summary>
    private static IReadOnlyList<(string Words, Remedy? Step)> Begin(Workbench bench) =>
    [
        ("Print a test page: does what is printed meet its place on your labels?", new Remedy("calibrate", Usual(bench))),
        ("Enter a bag of flakes, so that batches draw from it.", new Remedy("bag add")),
        ("Enter a bottle of alcohol.", new Remedy("bottle add")),
        ("Mix the first jar.", new Remedy("mix")),
    ];

    private static InputName[] Usual(Workbench bench) => ShopSettingsFile.Read(bench.Folder).Then(settings => LabelComposer.Open(bench.With(settings))).Then(composer => composer.UsualStock()).TryGet(out var stock, out _)
        ? [new("sheet", stock.Id)] : [];

    private static bool HasChanges(Values given) => Singly.Any(one => given.Get(one) is not null) || given.Get(Shelves) is not null || given.Get(Printers) is not null;

    /// <summary>The settings as they are at this moment with everything that was said; or all that is wrong with it.</summary>
    private static Result<ShopSettings> Changed(Values given, ShopSettings before)
    {
        var (after, faults) = (before, new List<Problem>());
        foreach (var one in Singly)
        {
            if (given.Get(one) is { } text)
            {
                Take(Change(given.Bench.With(after), one.Field.Name, text));
            }
        }

        if (given.Get(Shelves) is { } shelves)
        {
            Take(ShelfLines.Shelves(given.Bench.With(before), after, shelves, ShelfField));
        }

        if (given.Get(Printers) is { } printers)
        {
            Take(ShelfLines.Printers(given.Bench.With(before), after, printers, PrinterField));
        }

        return faults.Count == 0 ? after : Result<ShopSettings>.Failed(faults);

        void Take(Result<ShopSettings> changed)
        {
            faults.AddRange(changed.Problems);
            after = changed.TryGet(out var now, out _) ? now : after;
        }
    }

    /// <summary>A setting of one value; empty where nothing was said of it.</summary>
    private static Input<string?> One(string name, string label, string example, Func<ShopSettings, string?> settled) => new()
    {
        Fields = [new Field(name, label, example) { Settled = bench => settled(bench.Settings) }],
        TryRead = (values, one, out value) =>
        {
            value = values.Source.IsEmptied(name) ? ShopSetting.None : values.Text(name);
            return value is null || values.Take(Change(values.Bench, name, value), out _);
        },
    };

    /// <summary>A setting of several lines; null where nothing was said of it.</summary>
    private static Input<SettingLines?> Lines(
        string name, string label, string example, Func<ShopSettings, IEnumerable<string>> settled, Func<Workbench, ShopSettings, SettingLines, string, Result<ShopSettings>> change) => new()
        {
            Fields = [new Field(name, label, example) { IsMany = true, Settled = bench => string.Join('\n', settled(bench.Settings)) }],
            TryRead = (values, one, out value) =>
            {
                var said = values.Texts(name);
                value = said.Count == 0 && !values.Source.IsEmptied(name) ? null : new SettingLines(said, values.Source.Shown(name));
                return value is null || values.Take(Placed(change(values.Bench, values.Bench.Settings, value, name), name), out _);
            },
        };

    private static Result<ShopSettings> Change(Workbench bench, string name, string text) => Placed(ShopSetting.Change(bench, name, text), name);

    /// <summary>The same with its problems at the field that was filled in.</summary>
    private static Result<ShopSettings> Placed(Result<ShopSettings> changed, string name) =>
        changed.Ok ? changed : Result<ShopSettings>.Failed([.. changed.Problems.Select(problem => problem.Where is "value" or "setting" ? problem with { Where = name } : problem)]);

    /// <summary>The stock that jars' labels are printed on.</summary>
    private static IReadOnlyList<(string Value, string Words)> AllStock(Workbench bench) => LabelComposer.Open(bench).Then(composer => composer.Sheets()).TryGet(out var sheets, out _)
        ? [("", "The usual one where these rules hold"), .. sheets.Where(sheet => JarDesigns.Suits(sheet.Design)).Select(sheet => (sheet.Id, sheet.Title))]
        : [];

    private static IReadOnlyList<(string Value, string Words)> TappedStock(Workbench bench) => [.. AllStock(bench).Where(stock => CommonStock.Contains(stock.Value))];

    private static string? Figure(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture);
}
