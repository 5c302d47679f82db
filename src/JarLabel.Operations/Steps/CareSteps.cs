using JarLabel.Operations.Demo;

namespace JarLabel.Operations.Steps;

/// <summary>Keeps the shop: copies of its ledger, whether it is whole, and whether its own files are in order. Files are named at the machine itself, so
/// only what looks at the shop that is open has a page.</summary>
internal static class CareSteps
{
    private static Input<string> CopyFile => field ??= File("ledger-backup.db", "The file to write: ledger-backup.db.");

    private static Input<string> ExportFile => field ??= File("shop.jsonl", "The file to write: shop.jsonl.");

    private static Input<string> ImportFile => field ??= File("shop.jsonl", "What \"jarlabel export\" wrote.");

    private static Input<string> BackupFile => field ??= File("ledger-backup.db", "What \"jarlabel backup\" wrote.");

    private static Input<string?> IntoFolder => field ??= Input.Word("dir", "Into the folder", "alder-lane").Help("folder", "The shop folder that it comes into; else the shop that is open.").Change(one => one with { IsArgument = true, IsOptional = true });

    private static Input<bool> OverSound => field ??= Shared.Force.Help("Also in the place of a ledger that is in order; it is kept under another name.");

    private static Input<string> Folder => field ??= Shared.File("dir", "Folder", "demo-shop").Help("folder", "A folder that is new or empty.").Argument();

    private static Input<string?> CheckedFolder => field ??= Input.Optional<string>("dir", "Folder", "alder-lane", ReadFolder).Help("folder", "The folder with catalog/ and layouts/; else the shop's.")
        .Change(one => one with { IsArgument = true, IsOptional = true, IsTypedOnly = true });

    internal static Step Backup => field ??= Step.OfShop("backup", "Back up", "Write the whole shop into one file, also while others record; it is read back and checked.", [CopyFile, Shared.Force],
        given => LedgerCare.Backup(given.Bench, given.Get(CopyFile)).Then<Outcome>(report => new Outcome(CareAnswer.Of(given.Bench, report)))) with
    { Looks = true, IsTypedOnly = true };

    internal static Step Export => field ??= Step.OfShop("export", "Export", "Write every event as one line of JSON, for another program or another shop folder.", [ExportFile, Shared.Force],
        given => LedgerCare.Export(given.Bench, given.Get(ExportFile)).Then<Outcome>(report => new Outcome(CareAnswer.Of(given.Bench, report)))) with
    { Looks = true, IsTypedOnly = true };

    internal static Step Import => field ??= Step.OfShop("import", "Import", "Take the events of an export: all that are new, or none and every problem.", [ImportFile],
        given => LedgerCare.Import(given.Bench, given.Get(ImportFile)).Then<Outcome>(done => new Outcome(CareAnswer.Of(given.Bench, done.Report, done.Cautions)))) with
    { IsTypedOnly = true };

    internal static Step Restore => field ??= Step.OfShop("restore", "Restore", "Bring a backup back: it is checked first, and the ledger that stood there is kept under another name.", [BackupFile, IntoFolder, OverSound],
        given => LedgerCare.Restore(given.Bench, given.Get(BackupFile), given.Get(OverSound), given.Get(IntoFolder)).Then<Outcome>(report => new Outcome(CareAnswer.Of(given.Bench, report)))) with
    { IsTypedOnly = true };

    internal static Step Verify => field ??= Step.OfShop("verify", "Check the shop", "Check the whole shop: every event's seal, every jar, every written file. Changes nothing.", [],
        given => LedgerCare.Verify(given.Bench).Then<Outcome>(report => new Outcome(CareAnswer.Of(given.Bench, report)))) with
    { Looks = true };

    internal static Step Check => field ??= Step.OfShop("check", "Check the shop's files", "Read layouts and catalog files and report every problem.", [CheckedFolder],
        given => (given.Get(CheckedFolder) is { } named ? ShopFolder.At(named) : given.Bench.Folder).Then(ShopCheck.Of).Then<Outcome>(files => new Outcome(CareAnswer.Of(files)))) with
    { Looks = true, ReadsShopFiles = true };

    internal static Step Demo => field ??= Step.OfShop("demo", "Demo shop", "Build an invented shop with an invented year in it, to look at and to try things on.", [Folder],
        given => (given.Bench.DryRun ? TypingProblems.NoDryRun("demo") : DemoShop.Build(given.Get(Folder), given.Bench.Folder)).Then<Outcome>(report => new Outcome(CareAnswer.Of(given.Bench, report)))) with
    { IsTypedOnly = true };

    private static Result<string> ReadFolder(string text, string where) => string.IsNullOrWhiteSpace(text) ? TypingProblems.NotAFolder(where) : text;

    private static Input<string> File(string example, string help) => Shared.File("file", "File", example).Help("file", help).Argument();
}
