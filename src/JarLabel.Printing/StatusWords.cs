using System.Globalization;

namespace JarLabel.Printing;

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
