namespace JarLabel.Web.Serving;

/// <summary>What goes back.</summary>
/// <param name="Status">The HTTP status.</param>
/// <param name="Type">The media type.</param>
/// <param name="Body">The bytes.</param>
internal sealed record Reply(int Status, string Type, ReadOnlyMemory<byte> Body)
{
    private const string HtmlType = "text/html; charset=utf-8";

    /// <summary>Where to go instead.</summary>
    internal string? Location { get; init; }

    /// <summary>A cookie to keep.</summary>
    internal string? Cookie { get; init; }

    /// <summary>True for what never changes, and may be kept by the browser.</summary>
    internal bool Lasts { get; init; }

    /// <summary>The name under which a browser saves it.</summary>
    internal string? FileName { get; init; }

    /// <summary>A file in place of the bytes.</summary>
    internal PassingFile? Content { get; init; }

    internal static Reply Page(string html, int status = 200) => new(status, HtmlType, Encoding.UTF8.GetBytes(html));

    internal static Reply Refused(int status, params IReadOnlyList<Problem> problems) => Page(ProblemPage.Of(problems), status);

    /// <summary>The problems of a jar that was looked for: not there, or the ledger itself cannot be read.</summary>
    internal static Reply NotFound(IReadOnlyList<Problem> problems) =>
        Page(ProblemPage.Of(problems, looking: true), problems.Any(problem => problem.Code.StartsWith("JL4", StringComparison.Ordinal)) ? 503 : 404);

    internal static Reply SeeOther(string location) => new(303, "text/plain", default) { Location = location };

    internal static Reply Moved(string location) => new(308, "text/plain", default) { Location = location };

    /// <summary>The page, or the problems with the status that suits them.</summary>
    internal static Reply Of(Result<string> page, Func<IReadOnlyList<Problem>, Reply> refuse) => page.TryGet(out var html, out var problems) ? Page(html) : refuse(problems);

    internal async Task Send(HttpContext context)
    {
        using var content = Content;
        var response = context.Response;
        response.StatusCode = Status;
        response.ContentType = Type;
        response.ContentLength = content?.Stream.Length ?? Body.Length;
        Put("Cache-Control", Lasts ? "public, max-age=31536000, immutable" : null);
        Put("Location", Location);
        Put("Set-Cookie", Cookie);
        Put("Content-Disposition", FileName is null ? null : $"attachment; filename=\"{FileName}\"");
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await (content?.Stream.CopyToAsync(response.Body, context.RequestAborted) ?? response.Body.WriteAsync(Body, context.RequestAborted).AsTask());
        }

        void Put(string header, string? value)
        {
            if (value is not null)
            {
                response.Headers[header] = value;
            }
        }
    }
}
