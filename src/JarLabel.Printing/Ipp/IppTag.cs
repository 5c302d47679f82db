namespace JarLabel.Printing.Ipp;

/// <summary>What the next bytes are: the start of a group, or a value of a syntax (RFC 8010 section 3.5).</summary>
public enum IppTag : byte
{
    /// <summary>Group: what is asked for.</summary>
    OperationGroup = 0x01,

    /// <summary>Group: a job.</summary>
    JobGroup = 0x02,

    /// <summary>The end; the document follows.</summary>
    End = 0x03,

    /// <summary>Group: a printer.</summary>
    PrinterGroup = 0x04,

    /// <summary>Group: what was asked and cannot be had.</summary>
    UnsupportedGroup = 0x05,

    /// <summary>The value cannot be had.</summary>
    Unsupported = 0x10,

    /// <summary>The printer does not know.</summary>
    Unknown = 0x12,

    /// <summary>There is none.</summary>
    NoValue = 0x13,

    /// <summary>32 bits, signed.</summary>
    Whole = 0x21,

    /// <summary>One byte, 0 or 1.</summary>
    Boolean = 0x22,

    /// <summary>A number that stands for a word.</summary>
    Enum = 0x23,

    /// <summary>Any bytes.</summary>
    OctetString = 0x30,

    /// <summary>Across, down, and the unit: 3 dots per inch, 4 dots per centimetre.</summary>
    Resolution = 0x32,

    /// <summary>Lowest and highest.</summary>
    Range = 0x33,

    /// <summary>A collection begins.</summary>
    BeginCollection = 0x34,

    /// <summary>Text with its language.</summary>
    TextWithLanguage = 0x35,

    /// <summary>A name with its language.</summary>
    NameWithLanguage = 0x36,

    /// <summary>A collection ends.</summary>
    EndCollection = 0x37,

    /// <summary>Text.</summary>
    Text = 0x41,

    /// <summary>A name.</summary>
    Name = 0x42,

    /// <summary>A word of the standard's.</summary>
    Keyword = 0x44,

    /// <summary>An address.</summary>
    Uri = 0x45,

    /// <summary>A character set.</summary>
    Charset = 0x47,

    /// <summary>A language.</summary>
    Language = 0x48,

    /// <summary>A kind of document.</summary>
    MimeType = 0x49,

    /// <summary>The name of a collection's member.</summary>
    MemberName = 0x4A,
}
