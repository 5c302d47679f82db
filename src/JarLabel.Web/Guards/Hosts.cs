namespace JarLabel.Web.Guards;

/// <summary>The names this server answers to. A page of another site that had its own name point here would come with that name.</summary>
internal sealed class Hosts(IPAddress? lan, string? baseUrl)
{
    /// <summary>Every name, as a browser writes it.</summary>
    internal IReadOnlyList<string> Names { get; } = [.. Known(lan, baseUrl).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>The same as a certificate holds them: an IPv6 address without its brackets.</summary>
    internal IReadOnlyList<string> Plain => [.. Names.Select(name => name.Trim('[', ']'))];

    internal bool Allow(string host) => Names.Contains(host, StringComparer.OrdinalIgnoreCase);

    private static IEnumerable<string> Known(IPAddress? lan, string? baseUrl)
    {
        yield return "localhost";
        yield return "127.0.0.1";
        yield return "[::1]";
        if (lan is not null)
        {
            yield return lan.ToString() is var text && text.Contains(':', StringComparison.Ordinal) ? $"[{text}]" : text;
        }

        if (baseUrl is not null)
        {
            yield return new Uri(baseUrl).Host;
        }
    }
}
