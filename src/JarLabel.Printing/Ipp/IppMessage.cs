namespace JarLabel.Printing.Ipp;

/// <summary>A request or an answer without its document (RFC 8010 section 3).</summary>
/// <param name="Code">What is asked, or how it went.</param>
/// <param name="RequestId">Ties the answer to the request.</param>
/// <param name="Groups">In order.</param>
public sealed record IppMessage(ushort Code, int RequestId, IReadOnlyList<IppGroup> Groups)
{
    /// <summary>True when it went well, perhaps with something left out.</summary>
    public bool Succeeded => Code <= 0x00FF;

    /// <summary>The groups of one kind.</summary>
    public IEnumerable<IppGroup> Of(IppTag tag) => Groups.Where(g => g.Tag == tag);

    /// <summary>The first group of one kind; an empty one where there is none.</summary>
    public IppGroup First(IppTag tag) => Of(tag).FirstOrDefault() ?? new IppGroup(tag, []);

    /// <summary>What the printer says about how it went, or null.</summary>
    public string? Says => First(IppTag.OperationGroup).Word("status-message");
}
