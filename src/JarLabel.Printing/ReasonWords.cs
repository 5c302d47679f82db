namespace JarLabel.Printing;

/// <summary>The reasons that printers and jobs give for their state (RFC 8011 sections 5.3.8 and 5.4.12, PWG 5100.9), in words.</summary>
internal static class ReasonWords
{
    private static readonly Dictionary<string, string> Known = new(StringComparer.Ordinal)
    {
        ["media-empty"] = "it is out of paper",
        ["media-needed"] = "it waits for the right paper to be put in",
        ["media-low"] = "paper is running low",
        ["media-jam"] = "paper is jammed",
        ["input-tray-missing"] = "a paper tray is missing",
        ["output-area-full"] = "the output is full",
        ["output-tray-missing"] = "the output tray is missing",
        ["cover-open"] = "a cover is open",
        ["door-open"] = "a door is open",
        ["interlock-open"] = "a cover is open",
        ["toner-empty"] = "the toner is empty",
        ["toner-low"] = "toner is running low",
        ["marker-supply-empty"] = "ink, toner or ribbon is empty",
        ["marker-supply-low"] = "ink, toner or ribbon is running low",
        ["marker-waste-full"] = "the waste container is full",
        ["marker-waste-almost-full"] = "the waste container is nearly full",
        ["paused"] = "somebody paused it",
        ["moving-to-paused"] = "somebody paused it",
        ["stopped-partly"] = "a part of it is stopped",
        ["stopping"] = "it is stopping",
        ["shutdown"] = "it is off or shutting down",
        ["offline"] = "it is offline",
        ["connecting-to-device"] = "its queue cannot reach the device",
        ["timed-out"] = "its queue cannot reach the device",
        ["fuser-over-temp"] = "it is too hot",
        ["fuser-under-temp"] = "it is warming up",
        ["spool-area-full"] = "its memory is full",
        ["hold-new-jobs"] = "new jobs are held",
        ["printer-stopped"] = "the printer stands still",
        ["job-canceled-by-user"] = "somebody cancelled it at another machine",
        ["job-canceled-by-operator"] = "somebody cancelled it",
        ["job-canceled-at-device"] = "somebody cancelled it at the printer",
        ["aborted-by-system"] = "a fault of its own, which it does not explain",
        ["document-format-error"] = "it could not read the document",
        ["unsupported-document-format"] = "it takes no PDF",
        ["document-unprintable-error"] = "it could not print the document",
        ["job-completed-with-errors"] = "there were errors",
        ["job-completed-with-warnings"] = "there were warnings",
        ["job-completed-successfully"] = "all went well",
        ["job-printing"] = "it is printing",
        ["job-incoming"] = "it is being taken in",
        ["job-queued"] = "it waits behind other jobs",
        ["job-hold-until-specified"] = "it is held",
        ["resources-are-not-ready"] = "what it needs, such as paper, is not ready",
    };

    private static readonly string[] Endings = ["-error", "-warning", "-report"];

    /// <summary>Reasons that say nothing.</summary>
    private static readonly string[] Empty = ["none", "cups-waiting-for-job-completed", "other"];

    /// <summary>True when something is to be done before it prints.</summary>
    internal static bool Hinders(string reason) =>
        !reason.EndsWith("-warning", StringComparison.Ordinal) && !reason.EndsWith("-report", StringComparison.Ordinal)
        && Plain(reason) is "media-empty" or "media-needed" or "media-jam" or "cover-open" or "door-open" or "interlock-open" or "toner-empty" or "marker-supply-empty"
            or "paused" or "moving-to-paused" or "shutdown" or "offline" or "input-tray-missing" or "output-area-full";

    /// <summary>The reasons in words; null when none says anything.</summary>
    internal static string? Of(IEnumerable<string> reasons, string? message = null)
    {
        var words = reasons.Where(r => !Empty.Contains(r)).Select(r => Known.GetValueOrDefault(Plain(r), Plain(r))).Distinct().ToArray();
        return words.Length > 0 ? string.Join(", ", words) : string.IsNullOrWhiteSpace(message) ? null : Core.Quoted.Of(message);
    }

    private static string Plain(string reason)
    {
        var ending = Endings.FirstOrDefault(e => reason.EndsWith(e, StringComparison.Ordinal) && !Known.ContainsKey(reason));
        return ending is null ? reason : reason[..^ending.Length];
    }
}
