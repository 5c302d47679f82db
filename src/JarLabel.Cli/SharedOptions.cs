namespace JarLabel.Cli;

/// <summary>The options that every command knows.</summary>
internal static class SharedOptions
{
    internal static readonly Option<bool> Json = new("--json") { Description = "One JSON object instead of text.", Recursive = true };

    private static readonly Option<string> Shop = new("--shop") { Description = "The shop folder (else JARLABEL_SHOP, else the user's data folder).", HelpName = "folder", Recursive = true };
    private static readonly Option<string> Rules = new("--rules") { Description = "Labelling rules: osha or clp (else the shop's own).", HelpName = "rules", Recursive = true };
    private static readonly Option<string> Units = new("--units") { Description = "Amounts on screen: us or metric first.", HelpName = "units", Recursive = true };
    private static readonly Option<string> At = new("--at") { Description = "The moment to use instead of now: 2026-03-09, \"2026-03-09 14:30\" or yesterday.", HelpName = "date", Recursive = true };
    private static readonly Option<bool> DryRun = new("--dry-run") { Description = "Compute and show; record and write nothing.", Recursive = true };

    /// <summary>On every command that takes a file to write.</summary>
    internal static readonly Option<bool> Force = new("--force") { Description = Shared.Force.Field.Help };

    /// <summary>All of them.</summary>
    internal static IEnumerable<Option> All => [Shop, Json, Rules, Units, At, DryRun];

    internal static void AddTo(Command root)
    {
        foreach (var option in All)
        {
            root.Add(option);
        }
    }

    internal static Result<Session> Open(ParsedLine typed, TimeProvider clock, Func<string, Action<int, int>> progress, bool unread)
    {
        // A shop that cannot be opened is no reason to keep back what is wrong with the line.
        var request = Request(typed, clock) with { Progress = progress, FilesUnread = unread };
        var opened = Workbench.Open(request, Environment.GetEnvironmentVariable).Then<Session>(bench => new Session(bench));
        return opened.Ok ? opened : typed.Then(() => opened);
    }

    /// <summary>How the person comes to the bench.</summary>
    internal static WorkbenchOptions Request(ParsedLine typed, TimeProvider clock) => new(
        typed.Text(Shop), Now(typed, clock), typed.Value(Rules, ValueReader.Rules), typed.Value(Units, ValueReader.Metric), typed.Switch(DryRun))
    { Dated = typed.Text(At) is not null, Clock = clock.GetLocalNow().DateTime, Force = typed.Switch(Force) };

    /// <summary>The moment that counts as now: the one that was typed, or the clock's.</summary>
    internal static DateTime Now(ParsedLine typed, TimeProvider clock)
    {
        var now = Whole(clock.GetLocalNow().DateTime);
        return typed.Value(At, ValueReader.Moment(now)) ?? now;
    }

    private static DateTime Whole(DateTime moment) => new(moment.Year, moment.Month, moment.Day, moment.Hour, moment.Minute, moment.Second);
}

/// <summary>One run of the program: the workbench, and how the answer is wanted.</summary>
/// <param name="Workbench">The shop at this moment.</param>
internal sealed record Session(Workbench Workbench)
{
    /// <summary>Shows on a terminal what is being waited for; null clears it.</summary>
    internal Action<string?> Status { get; init; } = _ => { };
}
