namespace JarLabel.Printing;

/// <summary>What can go wrong between here and the paper.</summary>
public static class PrintingProblems
{
    private const string Again = "Nothing was printed.";

    internal static Problem NotAnAddress(string read, string where) =>
        new("JL501", $"Read {Quoted.Of(read)} as a printer's address; it starts with ipp://, ipps://, http:// or https:// and names a host, such as ipp://192.168.1.30/ipp/print. For a printer whose certificate nobody signed, its fingerprint may follow: #sha256: and 64 hex digits.", where);

    /// <summary>No queue, setting or address of that name.</summary>
    public static Problem NoSuchPrinter(string name, IEnumerable<string> known, string where)
    {
        var there = string.Join(", ", known.Select(Quoted.Of));
        return new("JL502", Message.Of($"There is no printer {Quoted.Of(name)}. {(there.Length == 0 ? "No print queue was found on this machine" : $"There are: {there}")}; give one of {new Remedy("printers")}, or an address such as ipp://192.168.1.30/ipp/print."), where);
    }

    internal static Problem NoSuchHost(string uri, string host) =>
        new("JL503", $"Nobody knows a host named {Quoted.Of(host)}. Is the name spelled right, and is this machine on the printer's network?", uri);

    internal static Problem NotThere(string uri) =>
        new("JL504", "The printer does not answer: it is switched off, asleep, on another network, or takes no IPP at this port (631 is usual).", uri);

    internal static Problem NoAnswer(string uri) =>
        new("JL505", "The printer took the connection and then said nothing for too long. Switch it off and on, or look at its display.", uri);

    internal static Problem Dropped(string uri) => new("JL506", "The printer broke off in the middle.", uri);

    internal static Problem NotIpp(string uri) =>
        new("JL507", "What answers at this address does not speak IPP as a printer does. The path may be wrong: /ipp/print is usual.", uri);

    internal static Problem EndlessAnswer(string uri) => new("JL508", "The printer's answer has no end; it was cut off after 1 MB.", uri);

    internal static Problem HttpStatus(string uri, int status) => new("JL509", status switch
    {
        401 or 403 => "The printer wants a name and a password, or lets this machine in only by another way. Allow printing without them in its settings, or print through a CUPS queue that knows them.",
        404 => "There is no printer at this path; /ipp/print is usual.",
        426 => "The printer wants a secure connection; write ipps:// in the place of ipp://.",
        _ => string.Create(CultureInfo.InvariantCulture, $"The printer's web server refused with status {status}."),
    }, uri);

    internal static Problem NotTrusted(string uri, string? fingerprint) =>
        new("JL510", fingerprint is null
            ? "No secure connection to the printer came about. It may know ipp:// only."
            : $"Nobody this machine trusts has signed the printer's certificate, or it is another one than before. When you are sure it is your printer, add #sha256:{fingerprint} to its address.", uri);

    internal static Problem Refused(string uri, int status, string? says, IReadOnlyList<string> unsupported) =>
        new("JL511", $"The printer refused: {StatusWords.Of(status)}{(unsupported.Count > 0 ? $" ({string.Join(", ", unsupported)})" : "")}{(says is { Length: > 0 } ? $"; it says {Quoted.Of(says)}" : "")}. {Again}", uri);

    internal static Problem NoPdf(string uri, IEnumerable<string> takes) =>
        new("JL512", $"The printer takes no PDF by itself, only {string.Join(", ", takes.Take(6))}. Print through a CUPS queue for it, which turns PDF into what it takes, or open the written file and print it at actual size.", uri);

    internal static Problem WrongMedia(string uri, double width, double height, IEnumerable<string> takes) =>
        new("JL513", Message.Of($"The printer takes no paper of {width:0.#} x {height:0.#} mm{Takes(takes)}. Choose other stock with {new InputName("sheet")}, or teach the printer this size."), uri);

    internal static Problem NotAccepting(string uri, string? why) =>
        new("JL514", $"The printer takes no jobs now{(why is null ? "" : $": {why}")}.", uri);

    internal static Problem IsStopped(string uri, string why) => new("JL515", $"The printer stands still: {why}. See to it, then print again.", uri);

    internal static Problem Stopped() => new("JL516", "You stopped it.");

    internal static Problem JobFailed(string uri, string how) => new("JL517", $"The printer gave the job up: {how}.", uri);

    internal static Problem Stalled(string uri, TimeSpan waited, string? why) =>
        new("JL518", string.Create(CultureInfo.InvariantCulture, $"Nothing moved at the printer for {waited.TotalSeconds:0} s{(why is null ? "" : $" ({why})")}; the job was taken back from it."), uri);

    internal static Problem LostSight(string uri, Problem why) =>
        new("JL519", $"The job was sent, and then the printer was lost from sight: {why.Message} Look whether the paper came out.", uri);

    internal static Problem NotCancelled(string uri) =>
        new("JL520", "The printer did not say that it let go of the job. Look whether the paper came out.", uri);

    /// <summary>A caution: what stands there may be cut off.</summary>
    /// <param name="uri">The printer.</param>
    /// <param name="places">The places.</param>
    /// <param name="missing">By how much, mm.</param>
    public static Problem InMargin(string uri, IReadOnlyList<int> places, double missing) =>
        new("JL521", Message.Of($"Place {string.Join(", ", places)} of this stock reaches {missing:0.#} mm into the edge that the printer cannot print; what stands there may be cut off. Use other places ({new InputName("start")}), or stock with a wider border."), uri);

    internal static Problem NotLoaded(string uri, double width, double height, IEnumerable<string> ready) =>
        new("JL522", string.Create(CultureInfo.InvariantCulture, $"The printer says that no paper of {width:0.#} x {height:0.#} mm is in it{(ready.Any() ? $", but {string.Join(", ", ready)}" : "")}. Put the stock in before it prints."), uri);

    internal static Problem MayScale(string uri) =>
        new("JL523", "The printer does not say that it can be set to print at actual size. Measure a label of the first sheet.", uri);

    internal static Problem Coarse(string uri, int dpi, int wanted) =>
        new("JL524", string.Create(CultureInfo.InvariantCulture, $"The printer has {dpi} dots per inch and this stock is laid out for {wanted}; small type and the code may suffer. Scan the first label."), uri);

    internal static Problem DoneWithErrors(string uri, string how) => new("JL525", $"The printer is done and says that something went wrong: {how}. Look at the label.", uri);

    internal static Problem Attention(string uri, string why) => new("JL526", $"The printer says: {why}.", uri);

    internal static Problem NotKnown(string uri) => new("JL528", "The printer knows no such queue or job.", uri);

    /// <summary>Only a PDF goes to a printer.</summary>
    public static Problem OnlyPdf(string file) => new("JL527", Message.Of($"Only a PDF goes to a printer, and {new InputName("out")} says {Quoted.Of(Path.GetFileName(file))}; leave {new InputName("out")} away or give a name ending in .pdf."), "out");

    private static string Takes(IEnumerable<string> sizes)
    {
        var some = sizes.Take(8).ToArray();
        return some.Length == 0 ? "" : $"; it takes {string.Join(", ", some)}{(sizes.Skip(8).Any() ? " and others" : "")}";
    }
}

/// <summary>What a status code of IPP means (RFC 8011 appendix B), for a person at a bench.</summary>
internal static class StatusWords
{
    internal static string Of(int status) => status switch
    {
        0x0400 => "it did not understand the request",
        0x0401 or 0x0402 or 0x0403 => "this machine or user may not print there",
        0x0405 or 0x0505 or 0x0507 => "it is busy or takes no more jobs now",
        0x0406 => "there is no such queue or job",
        0x0408 or 0x0409 => "the document is too large for it",
        0x040A => "it takes no PDF",
        0x040B => "it cannot do what was asked, such as this size of paper",
        0x040F or 0x0410 or 0x0411 => "it could not read the document",
        0x0501 => "it does not know this operation",
        0x0502 => "it does not work now",
        0x0503 => "it speaks another version of IPP",
        0x0504 => "the device has a fault",
        0x0506 => "it is not accepting jobs",
        0x0508 => "the job was cancelled",
        _ => string.Create(CultureInfo.InvariantCulture, $"status 0x{status:x4}"),
    };
}
