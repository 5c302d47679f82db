namespace JarLabel.Printing.Printers;

/// <summary>The groups of each request. Charset, language and the printer's address come first, as RFC 8011 section 4.1.4 wants it.</summary>
internal static class Requests
{
    private static readonly string[] AskedOfPrinter =
    [
        "printer-name", "printer-info", "printer-make-and-model", "printer-state", "printer-state-reasons", "printer-state-message", "printer-is-accepting-jobs",
        "document-format-supported", "media-supported", "media-ready", "media-col-supported", "media-col-ready", "media-col-database", "media-size-supported",
        "media-left-margin-supported", "media-top-margin-supported", "media-right-margin-supported", "media-bottom-margin-supported",
        "print-scaling-supported", "sides-supported", "printer-resolution-supported", "printer-uri-supported", "printer-location",
    ];

    private static readonly string[] AskedOfJob = ["job-id", "job-name", "job-state", "job-state-reasons", "job-state-message", "job-media-sheets-completed", "job-impressions-completed"];

    internal static IReadOnlyList<IppGroup> Attributes(string uri, string user) => [Operation(uri, user, Words("requested-attributes", AskedOfPrinter))];

    internal static IReadOnlyList<IppGroup> Queues(string uri, string user) => [Operation(uri, user, Words("requested-attributes", AskedOfPrinter))];

    internal static IReadOnlyList<IppGroup> Job(string uri, string user, int id) => [Operation(uri, user, Id(id), Words("requested-attributes", AskedOfJob))];

    internal static IReadOnlyList<IppGroup> Cancel(string uri, string user, int id) => [Operation(uri, user, Id(id))];

    internal static IReadOnlyList<IppGroup> Jobs(string uri, string user, bool done) =>
        [Operation(uri, user, One("which-jobs", IppValue.Keyword(done ? "completed" : "not-completed")), One("limit", IppValue.Of(100)), Words("requested-attributes", AskedOfJob))];

    /// <summary>What Validate-Job and Print-Job share: a fidelity that forbids other paper, and only what the printer says it knows.</summary>
    internal static IReadOnlyList<IppGroup> Print(string uri, PrintOrder order, string jobName, PrinterFacts facts) =>
    [
        Operation(
            uri,
            order.User,
            One("job-name", IppValue.Of(IppTag.Name, jobName)),
            One("ipp-attribute-fidelity", IppValue.Of(true)),
            One("document-format", IppValue.Of(IppTag.MimeType, "application/pdf"))),
        new IppGroup(IppTag.JobGroup, [.. Template(order, facts)]),
    ];

    private static IEnumerable<IppField> Template(PrintOrder order, PrinterFacts facts)
    {
        if (facts.ChoosesByMeasures)
        {
            yield return One("media-col", IppValue.Collection(One("media-size", Size(order, facts))));
        }
        else if (facts.NameOf(order.Width, order.Height) is { } name)
        {
            yield return One("media", IppValue.Keyword(name));
        }

        if (facts.CanKeepSize)
        {
            yield return One("print-scaling", IppValue.Keyword("none"));
        }

        if (facts.KnowsSides)
        {
            yield return One("sides", IppValue.Keyword("one-sided"));
        }
    }

    /// <summary>The printer's own figures for the paper, in hundredths of a millimetre: 21590 for 8 1/2 inches.</summary>
    private static IppValue Size(PrintOrder order, PrinterFacts facts)
    {
        var known = facts.Loaded.Concat(facts.Sizes).FirstOrDefault(s => s.Fits(order.Width, order.Height));
        return IppValue.Collection(
            One("x-dimension", IppValue.Of(PaperSize.Named(known?.Width ?? (0, int.MaxValue), order.Width))),
            One("y-dimension", IppValue.Of(PaperSize.Named(known?.Height ?? (0, int.MaxValue), order.Height))));
    }

    private static IppGroup Operation(string uri, string user, params IReadOnlyList<IppField> more) => new(IppTag.OperationGroup,
    [
        One("attributes-charset", IppValue.Of(IppTag.Charset, "utf-8")),
        One("attributes-natural-language", IppValue.Of(IppTag.Language, "en")),
        One("printer-uri", IppValue.Of(IppTag.Uri, uri)),
        .. more.Where(a => a.Name == "job-id"),
        One("requesting-user-name", IppValue.Of(IppTag.Name, user)),
        .. more.Where(a => a.Name != "job-id"),
    ]);

    private static IppField Id(int id) => One("job-id", IppValue.Of(id));

    private static IppField One(string name, IppValue value) => new(name, [value]);

    private static IppField Words(string name, IEnumerable<string> words) => new(name, [.. words.Select(IppValue.Keyword)]);
}
