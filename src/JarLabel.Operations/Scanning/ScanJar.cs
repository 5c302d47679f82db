using System.Text.RegularExpressions;

namespace JarLabel.Operations.Scanning;

/// <summary>Finds the jar behind a label's code, a typed number, or the codes in a photo.</summary>
public static partial class ScanJar
{
    private const string Where = "what";

    /// <summary>The jar behind what a scanner or a hand typed: a label's whole code, its end <c>JAR 142-5.1</c>, or a jar's number.</summary>
    public static Result<Scanned> Find(Workbench bench, string typed)
    {
        return LabelCode.Read(typed) is { } code
            ? LedgerAccess.Jar(bench, code.Jar).Then(history => Demand(bench, typed, code, history)).Then<Scanned>(history => Of(bench, typed, code.Revision, history))
            : JarOf(typed).Then(number => LedgerAccess.Jar(bench, number)).Then<Scanned>(history => Of(bench, typed, null, history));
    }

    /// <summary>What every code in a photo says, from the top to the bottom; at least one.</summary>
    public static Result<string[]> Photo(string file)
    {
        try
        {
            InputFile.Demand(file);
            return File.Exists(file) ? QrReader.ReadFile(file) : ScanProblems.NoSuchPhoto(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return ScanProblems.PhotoUnreadable(file, fault.Message);
        }
    }

    /// <summary>The same of a photo that was sent, within the same bounds.</summary>
    /// <param name="photo">The bytes of the picture.</param>
    /// <param name="where">What to call it in a problem.</param>
    /// <param name="stop">Ends the looking early; what was found until then counts.</param>
    public static Result<string[]> Photo(Stream photo, string where, CancellationToken stop) => QrReader.Read(photo, where, stop);

    private static Result<JarNumber> JarOf(string typed) =>
        JarNumber.Read(Named().Replace(typed, ""), Where) is var read && (read.Ok || typed.Trim().Length <= 12) ? read : ScanProblems.NotOurs(typed);

    [GeneratedRegex(@"^\s*jar\s*(?=\d)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Named();

    /// <summary>A whole code must be one that this shop printed: another shop has a jar of the same number.</summary>
    private static Result<JarHistory> Demand(Workbench bench, string typed, LabelCode code, JarHistory history) =>
        code.IsShort(typed) || history.Events.Any(e => e.Event is Labelled l && string.Equals(l.Payload, typed.Trim(), StringComparison.OrdinalIgnoreCase))
            ? history
            : code.Revision > history.Jar.Revision ? IsOfThisAddress(bench, typed, code) ? history : ScanProblems.NewerOrOtherShop(typed, code, history.Jar)
            : ScanProblems.OtherShop(typed, code);

    /// <summary>True for the address of this shop's page of the jar: its labels may have been printed from another copy of the ledger.</summary>
    private static bool IsOfThisAddress(Workbench bench, string typed, LabelCode code) => bench.Settings.BaseUrl is { } address
        && string.Equals(typed.Trim(), string.Create(CultureInfo.InvariantCulture, $"{address.Text.TrimEnd('/')}/J/{code.Jar}.{code.Revision}"), StringComparison.OrdinalIgnoreCase);

    private static Scanned Of(Workbench bench, string payload, int? revision, JarHistory history)
    {
        var jar = history.Jar;
        var hazards = JarWords.Hazards(bench, jar);
        Problem[] cautions =
        [
            .. If(revision < jar.Revision, ScanProblems.OutOfDate(jar, revision ?? 0)),
            .. If(revision > jar.Revision, ScanProblems.Newer(jar, revision ?? 0)),
            .. If(!jar.OnShelf, ScanProblems.NotOnShelf(jar)),
            .. JarSeen.Cautions(bench, history, hazards, labelSeen: revision is not null),
        ];
        return new Scanned(payload, revision, new JarOutcome(history, hazards, null, cautions));
    }

    private static Problem[] If(bool? so, Problem caution) => so == true ? [caution] : [];
}

/// <summary>The jar behind a code or a number.</summary>
/// <param name="Payload">What was read.</param>
/// <param name="Revision">The revision that the label speaks of; null when only a number was typed.</param>
/// <param name="Jar">The jar as it is now; its cautions say what is wrong with the label.</param>
public sealed record Scanned(string Payload, int? Revision, JarOutcome Jar)
{
    /// <summary>True when the jar was changed after the label was printed.</summary>
    public bool OutOfDate => Revision < Jar.History.Jar.Revision;
}
