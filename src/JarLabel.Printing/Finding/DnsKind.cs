namespace JarLabel.Printing.Finding;

/// <summary>The kinds of record that say where a printer is (RFC 1035 section 3.2.2; RFC 2782).</summary>
public enum DnsKind
{
    /// <summary>A host's address.</summary>
    Address = 1,

    /// <summary>The name of one printer.</summary>
    Leads = 12,

    /// <summary>What a printer says of itself.</summary>
    Words = 16,

    /// <summary>A printer's host and port.</summary>
    Service = 33,
}
