namespace JarLabel.Web;

/// <summary>Whether the codes on labels lead to the pages that are served.</summary>
public static class LabelAddress
{
    /// <summary>True when they lead to the pages at an address.</summary>
    /// <param name="codes">Where the codes lead; null for nowhere.</param>
    /// <param name="pages">Where the pages are.</param>
    public static bool Leads(string? codes, string pages) =>
        codes is not null && Uri.TryCreate(codes, UriKind.Absolute, out var to) && Uri.TryCreate(pages, UriKind.Absolute, out var here)
        && string.Equals(to.GetLeftPart(UriPartial.Authority), here.GetLeftPart(UriPartial.Authority), StringComparison.OrdinalIgnoreCase);
}
