using Microsoft.AspNetCore.WebUtilities;

namespace JarLabel.Web.Serving;

/// <summary>Reads a form: small, soon, and of the one kind that our pages send.</summary>
internal static class FormBody
{
    /// <summary>Most bytes of a form.</summary>
    internal const int Most = 16 * 1024;

    private const string Kind = "application/x-www-form-urlencoded";
    private const int MostFields = 64;
    private static readonly Dictionary<string, string> Nothing = [];
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(15);

    /// <summary>The fields by name, or the status and the problem.</summary>
    internal static async Task<(IReadOnlyDictionary<string, string> Fields, int Status, Problem? Problem)> Read(HttpRequest request)
    {
        if (request.ContentType?.Split(';')[0].Trim().Equals(Kind, StringComparison.OrdinalIgnoreCase) != true)
        {
            return (Nothing, 415, WebProblems.NotAForm(request.ContentType));
        }

        try
        {
            using var patience = CancellationTokenSource.CreateLinkedTokenSource(request.HttpContext.RequestAborted);
            patience.CancelAfter(Patience);
            using var text = new StreamReader(request.Body, Encoding.UTF8, leaveOpen: true);
            return (Fields(await text.ReadToEndAsync(patience.Token)), 200, null);
        }
        catch (Exception fault) when (fault is BadHttpRequestException or OperationCanceledException or InvalidDataException)
        {
            return (Nothing, fault is BadHttpRequestException { StatusCode: 413 } ? 413 : 400, WebProblems.TooLarge(Most));
        }
    }

    /// <summary>What an address fills in; several values under one name as they are written into one field.</summary>
    internal static IReadOnlyDictionary<string, string> Given(IQueryCollection query) => query.Count is > 0 and <= MostFields
        ? query.ToDictionary(f => f.Key, f => string.Join("; ", (IEnumerable<string?>)f.Value), StringComparer.Ordinal)
        : Nothing;

    private static Dictionary<string, string> Fields(string text)
    {
        using var reader = new FormReader(text) { ValueCountLimit = MostFields, KeyLengthLimit = 64, ValueLengthLimit = Most };
        return reader.ReadForm().ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);
    }
}
