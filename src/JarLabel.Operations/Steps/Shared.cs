namespace JarLabel.Operations.Steps;

/// <summary>Inputs that several steps want. Each is made when it is first asked for.</summary>
internal static class Shared
{
    /// <summary>No sheet has more places: fifty columns of a hundred rows.</summary>
    internal const int MostPlaces = 5000;

    internal static Input<JarNumber> Jar => field ??= Input.Of("jar", "Jar", "142", JarNumber.Read)
        .Change(one => one with { Help = "The jar: 142 or 142-5.", IsArgument = true, IsSubject = true, Stands = NoSuchJar });

    private static IReadOnlyList<Problem> NoSuchJar(Workbench bench, string text) => JarNumber.Read(text, Jar.Field.Name).TryGet(out var number, out _) ? LedgerAccess.Jar(bench, number).Problems : [];

    internal static Input<Grade> Grade => field ??= Input.Of<Grade>("grade", "Flakes", "garnet", Choose.Grade)
        .Help("id", "The flakes: garnet, blonde, orange-dewaxed, seedlac, ...")
        .Choices(Choose.Grades("choose")).Change(one => one with { Takes = text => ShopCatalog.Ours.Grades.Named(text).Ok });

    internal static Input<Solvent> Solvent => field ??= Input.Of<Solvent>("solvent", "Alcohol", "ethanol-95", Choose.Solvent)
        .Help("id", "The alcohol: ethanol-95, denatured-unknown, isopropanol-99, ... or one of the shop's own.")
        .Choices(Choose.Solvents("choose")).Change(one => one with { Takes = text => ShopCatalog.Ours.Solvents.Named(text).Ok });

    internal static Input<string?> Job => field ??= Input.Optional("job", "What for", "viola top", Printed(120)).Help("text", "What it is for: \"viola top\".");

    internal static Input<string?> SeldomJob => field ??= Job.Change(one => one with { Label = "What it is for", IsMore = true });

    internal static Input<string?> Note => field ??= Input.Optional("note", "Note", "strained twice", Printed(500)).Help("text", "Anything else.").More();

    internal static Input<int> Copies => field ??= Input.Or("copies", "Copies", "3", ValueReader.WholeNumber(1, JarList.MostCopies).Invoke, 1).Help("number", "How many of each label, one after the other.").More();

    /// <summary>A file to write; null for the usual place.</summary>
    internal static Input<string?> LabelFile => field ??= Out("The file to write: .pdf, .png or .svg; else a PDF in the shop's labels folder.");

    internal static Input<Temperature?> Temperature => field ??= Input.Optional("temp", "Temperature at the bench", "20 C", TemperatureText.Read).In(UsualUnits.Temperatures)
        .Help("temperature", "Temperature at the bench: 68F, \"20 C\" (the default).").Hint("20 C when left empty; 68F or 22 C").More();

    internal static Input<SupplyNumber?> Bag => field ??= Input.Optional("bag", "From the bag", "1", SupplyNumber.ReadBag)
        .Help("bag", "The bag the flakes come from (\"jarlabel bag list\"); its grade and date are known then.").Hint("its grade and date are known then").More()
        .Choices(bench => SupplyBook.Bags(bench).TryGet(out var bags, out _) && bags.Any(bag => !bag.Unfit) ? [("", "not from the ledger"), .. bags.Where(bag => !bag.Unfit).Select(bag => ($"{bag.Number}", SupplyChoiceWords.Of(bench, bag)))] : [])
        .Change(one => one with { Stands = SupplyBook.NotThere(SupplyKind.Bag) });

    internal static Input<SupplyNumber?> Bottle => field ??= Input.Optional("bottle", "From the bottle", "1", SupplyNumber.ReadBottle)
        .Help("bottle", "The bottle the alcohol comes from (\"jarlabel bottle list\").").More()
        .Choices(bench => SupplyBook.Bottles(bench).TryGet(out var bottles, out _) && bottles.Count > 0 ? [("", "not from the ledger"), .. bottles.Select(bottle => ($"{bottle.Number}", SupplyChoiceWords.Of(bench, bottle)))] : [])
        .Change(one => one with { Stands = SupplyBook.NotThere(SupplyKind.Bottle) });

    internal static Input<LacForm?> Form => field ??= Input.Optional<LacForm>("form", "Form of the flakes", "flake", (bench, text, where) => bench.Catalog.Forms.Named(text, where))
        .Help("form", "flake, button, seed or ground; else the grade's usual form.").More()
        .Choices(bench => [("", "the usual one"), .. bench.Catalog.Forms.Rows.Select(form => (form.Id, form.Id))]);

    internal static Input<DateOnly?> FlakeDate => field ??= Input.Optional<DateOnly>("flake-date", "Flakes made or bought on", "2025-10-01", ReadFlakeDate)
        .Help("date", "When the flakes were made or bought: 2025-10-01.").Hint("year-month-day, such as 2025-10-01").More();

    private static Input<Volume?> Holds => field ??= Input.Optional("container", "Into a larger jar that holds", "500 mL", VolumeText.Read).In(UsualUnits.Volumes)
        .Help("volume", "What the jar holds to the brim: \"500 mL\".").Hint("to the brim, such as 500 mL or 1 pt").More();

    private static Input<ContainerMaterial?> Material => field ??= Input.Optional("material", "The jar is of", "glass", (Reader<ContainerMaterial>)ValueReader.Material)
        .Help("material", "glass (the default), lined-metal, metal or plastic.").More()
        .Choices(Choose.Materials());

    /// <summary>The jar that something new goes into.</summary>
    internal static Input<Container> NewContainer => field ??= Input.Group<Container>([HoldsNew, Material], given => new Container(given.Get(Material) ?? ContainerMaterial.Glass, given.Get(HoldsNew)));

    private static Input<Volume?> HoldsNew => field ??= Holds.Change(one => one with { Label = "The jar holds", IsMore = false });

    /// <summary>The larger jar that a changed batch goes into; null when it stays in its own.</summary>
    internal static Input<Container?> OtherContainer => field ??= Input.OptionalGroup<Container>([Holds, Material], given =>
        given.Get(Holds) is { } holds ? new Container(given.Get(Material) ?? ContainerMaterial.Glass, holds) : null);

    private static Input<string?> Design => field ??= Input.Word("design", "Label design", "wide").Help("id", "The label design (\"jarlabel designs\" lists them).").More()
        .Choices(bench => LabelComposer.Open(bench).TryGet(out var composer, out _) && composer.Designs().TryGet(out var designs, out _)
            ? [("", "the usual for that stock"), .. designs.Where(design => JarDesigns.Suits(design.Id)).Select(design => (design.Id, design.Title))] : []);

    private static Input<string?> Sheet => field ??= Input.Word("sheet", "Label stock", "letter-2x5-101.6x50.8").Help("id", "The label stock (\"jarlabel sheets\" lists it).").More()
        .Choices(Choose.Stock("the shop's usual"));

    private static Input<int?> Start => field ??= Input.Optional<int>("start", "Place on the sheet", "1", (_, text, where) => ValueReader.WholeNumber(1, MostPlaces)(text, where))
        .Help("place", "The place on the sheet, from 1; else the next free one.").Hint("the next free one when left empty").More();

    private static Input<string?> Printer => field ??= Input.Word("printer", "Laid out for", "bench")
        .Help("name", "The printer whose calibration counts; else the one it is sent to, else what was measured without naming one.").Hint("places as measured on that printer").More()
        .Choices(bench => CalibrationFile.Read(bench.Folder).TryGet(out var measured, out _) && measured.Select(one => one.Printer).OfType<string>().Distinct().ToArray() is { Length: > 0 } names
            ? [("", "the printer it goes to"), .. names.Select(name => (name, name))] : []);

    private static Input<bool> Mono => field ??= Input.Flag("mono", "In pure black and white").Help("In pure black and white, as on thermal rolls, which are always so.").More();

    /// <summary>The printer that what is written goes to; null for none.</summary>
    internal static Input<string?> PrintTo => field ??= Input.Word("print-to", "Print it on", "bench")
        .Help("printer", "The printer to send it to: ipp://192.168.1.30/ipp/print, or a name \"jarlabel printers\" lists.")
        .Change(one => one with { Short = "to", TakesOther = text => PrinterAddress.Read(text, "").TryGet(out _, out _) })
        .Choices(bench => new PrinterBook(bench, Environment.GetEnvironmentVariable).Names() is { Count: > 0 } names
            ? [("", "no printer: a PDF to take"), .. names.Select(name => (name, name))] : []);

    private static Input<bool> NoLabel => field ??= Input.Flag("no-label", "No new label").Help("Record it, write no label.").More();

    /// <summary>Which label is wanted.</summary>
    internal static Input<LabelChoice> Label => field ??= Input.Group<LabelChoice>([Design, Sheet, Start, Printer, Mono, PrintTo], LabelOf);

    /// <summary>The label that comes with a step; null when none is wanted.</summary>
    internal static Input<LabelChoice?> NewLabel => field ??= Input.OptionalGroup<LabelChoice>([NoLabel, Label], given => given.Get(NoLabel) ? null : given.Get(Label));

    /// <summary>One of the two papers there are; else the one usual where the shop's rules hold.</summary>
    internal static Input<T> Paper<T>(string help, T a4, T letter)
        where T : struct => new()
        {
            Fields = [new Field("paper", "Paper", "a4") { Kind = "paper", Help = help, IsMore = true, Choices = _ => [("", "the usual one"), ("a4", "A4"), ("letter", "Letter")] }],
            TryRead = (values, _, out value) =>
            {
                value = values.Bench.Rules == RuleSet.Clp ? a4 : letter;
                var papers = new Dictionary<string, T>(StringComparer.OrdinalIgnoreCase) { ["a4"] = a4, ["letter"] = letter };
                return values.Text("paper") is not { } text || values.Take(ValueReader.Choice(text, "paper", papers), out value);
            },
        };

    /// <summary>The room that work is done in.</summary>
    internal static Input<Volume> WorkRoom => field ??= Input.Or("room", "Air in the room", "50 m3", RoomText.Read, NoticeRequest.UsualRoom)
        .Help("volume", "Air in the room: \"50 m3\" (the default), \"1800 cu ft\", \"20 x 15 x 9 ft\".").Hint("50 m3 when left empty; 1800 cu ft, 20 x 15 x 9 ft");

    /// <summary>A note on a bag or bottle.</summary>
    internal static Input<string?> SupplyNote => field ??= Input.Optional("note", "Note", "from the fair", Printed(120)).Help("text", "Anything else.").More();

    /// <summary>Why a bag or bottle goes.</summary>
    internal static Input<string?> WhyItGoes(string example) => Input.Optional("why", "Why it goes", example, Printed(120)).Help("text", "Why it goes.");

    /// <summary>Paper for a drawing.</summary>
    internal static Input<Paper> DrawingPaper => field ??= Paper("Paper of the drawing: a4 or letter; else a4 under clp, letter under osha.", Layout.Charts.Paper.A4, Layout.Charts.Paper.Letter).Change(one => one with { IsTypedOnly = true });

    /// <summary>A calendar to write; null for none.</summary>
    internal static Input<string?> Calendar => field ??= Input.Optional<string>("ics", "Calendar", "shop.ics", FileText.Read)
        .Help("file", "Write a calendar (iCalendar, RFC 5545) with the dates to swirl, strain, test and use by.").Change(one => one with { IsTypedOnly = true });

    /// <summary>A shelf that something goes to.</summary>
    /// <param name="help">Its line of help.</param>
    /// <param name="usual">The words for where it goes when none is chosen.</param>
    internal static Input<string?> Shelf(string help, string usual) => Input.Word("shelf", "Shelf", "main").Help("name", help).More()
        .Choices(Choose.Shelves(usual));

    /// <summary>A day that has been.</summary>
    internal static Input<DateOnly> PastDay(string label, string example, string help) =>
        Input.Of<DateOnly>("date", label, example, (bench, text, where) => ValueReader.DayUntil(bench.Now)(text, where)).Help("date", help).Hint("year-month-day, such as " + example);

    /// <summary>Somebody's name.</summary>
    internal static Input<string?> By(string label, string help) => Input.Optional("by", label, "Anna", Printed(60)).Help("name", help).More();

    /// <summary>A file that is read.</summary>
    internal static Input<string> File(string name, string label, string example) => Input.Of<string>(name, label, example, FileText.Read);

    /// <summary>A file that is written where somebody says.</summary>
    internal static Input<string?> Out(string help) => Input.Optional<string>("out", "File", "label.pdf", FileText.Read).Help("file", help).Change(one => one with { IsTypedOnly = true });

    /// <summary>Whether somebody else's file may be written over; the shop is opened with it.</summary>
    internal static Input<bool> Force => field ??= Input.Flag("force", "Write over").Help("Write over a file that JarLabel did not write; never over the shop's own.").Change(one => one with { IsTypedOnly = true });

    /// <summary>A line that labels and cards can print.</summary>
    internal static Reader<string> Printed(int longest) => ValueReader.PrintedUpTo(longest).Invoke;

    private static Result<LabelChoice> LabelOf(Values given) => new LabelChoice(given.Get(Design), given.Get(Sheet), given.Get(Start))
    {
        Printer = given.Get(Printer) ?? given.Get(PrintTo),
        LaidOutOnly = given.Get(Printer) is not null,
        Mono = given.Get(Mono),
    };

    /// <summary>The flakes' own date, which does not lie ahead.</summary>
    private static Result<DateOnly> ReadFlakeDate(Workbench bench, string text, string where)
    {
        if (!ValueReader.Day(bench.Now)(text, where).TryGet(out var day, out var faults))
        {
            return faults;
        }

        return day > DateOnly.FromDateTime(bench.Now) ? TypingProblems.FlakesFromTheFuture(text, where) : day;
    }
}
