using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace JarLabel.Web.Serving;

/// <summary>Reads the one photo that a form sends, with the form's mark before it: so large at most, and soon. What comes without the mark, or beyond the
/// limit, is read past and not kept, so that the answer still reaches whoever sends it.</summary>
internal static class PhotoBody
{
    /// <summary>Most bytes of a photo: the best picture of a telephone's camera.</summary>
    internal const int Most = 20 * 1024 * 1024;

    /// <summary>The name of its field.</summary>
    internal const string Name = "photo";

    private const string Kind = "multipart/form-data";
    private const int MostParts = 8, LongestBoundary = 70, LongestMark = 256;

    /// <summary>So much is read past before a photo that is too large is cut off.</summary>
    private const int MostPast = 4 * Most;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(90);

    /// <summary>True for a form that sends files.</summary>
    internal static bool Is(HttpRequest request) => request.ContentType?.Split(';')[0].Trim().Equals(Kind, StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>The photo, or the status and the problem.</summary>
    /// <param name="request">The request.</param>
    /// <param name="fits">Whether a form's mark is ours.</param>
    internal static async Task<(PhotoBytes? Photo, int Status, Problem? Problem)> Read(HttpRequest request, Func<string, bool> fits)
    {
        if (Boundary(request) is not { } boundary)
        {
            return (null, 415, WebProblems.NotAForm(request.ContentType));
        }

        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = MostPast;
        }

        var photo = new PhotoBytes((int)Math.Clamp(request.ContentLength ?? 0, 0, Most));
        try
        {
            using var patience = CancellationTokenSource.CreateLinkedTokenSource(request.HttpContext.RequestAborted);
            patience.CancelAfter(Patience);
            var (ours, whole) = await Parts(new MultipartReader(boundary, request.Body), photo, fits, patience.Token);
            return !ours ? (null, 403, WebProblems.OldPhoto())
                : !whole ? (null, 413, WebProblems.PhotoTooLarge(Most))
                : photo.Length == 0 ? (null, 422, WebProblems.NoPhoto())
                : (photo, 200, null);
        }
        catch (Exception fault) when (fault is BadHttpRequestException { StatusCode: 413 })
        {
            return (null, 413, WebProblems.PhotoTooLarge(Most));
        }
        catch (Exception fault) when (fault is OperationCanceledException or BadHttpRequestException)
        {
            return (null, 400, WebProblems.PhotoTooSlow());
        }
        catch (Exception fault) when (fault is InvalidDataException or IOException)
        {
            return (null, 400, WebProblems.PhotoCutOff());
        }
    }

    private static string? Boundary(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out var kind) && HeaderUtilities.RemoveQuotes(kind.Boundary) is { Length: > 0 and <= LongestBoundary } boundary
            ? boundary.ToString()
            : null;

    /// <summary>Whether the mark was ours, and whether all of the photo is held.</summary>
    private static async Task<(bool Ours, bool Whole)> Parts(MultipartReader parts, PhotoBytes photo, Func<string, bool> fits, CancellationToken stop)
    {
        var (ours, whole) = (false, true);
        for (var i = 0; i < MostParts && await parts.ReadNextSectionAsync(stop) is { } part; i++)
        {
            switch (part.GetContentDispositionHeader()?.Name.ToString().Trim('"'))
            {
                case "token":
                    ours = fits(await Text(part.Body, stop));
                    break;
                case Name when ours && photo.Length == 0:
                    whole = await Held(part.Body, photo, stop);
                    break;
            }
        }

        return (ours, whole);
    }

    private static async Task<string> Text(Stream part, CancellationToken stop)
    {
        var bytes = new byte[LongestMark];
        return Encoding.UTF8.GetString(bytes, 0, await part.ReadAtLeastAsync(bytes, LongestMark, throwOnEndOfStream: false, stop));
    }

    private static async Task<bool> Held(Stream part, PhotoBytes photo, CancellationToken stop)
    {
        var bytes = new byte[1 << 16];
        int read;
        while ((read = await part.ReadAsync(bytes, stop)) > 0)
        {
            if (photo.Length + read > Most)
            {
                return false;
            }

            photo.Write(bytes, 0, read);
        }

        return true;
    }
}

/// <summary>A photo held in memory, which ends early once nobody waits for it any more: so does whoever reads it.</summary>
/// <param name="bytes">As much as it may come to.</param>
internal sealed class PhotoBytes(int bytes) : MemoryStream(bytes)
{
    /// <summary>When it ends early.</summary>
    internal CancellationToken Stop { get; set; }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => Stop.IsCancellationRequested ? 0 : base.Read(buffer, offset, count);

    /// <inheritdoc/>
    public override int Read(Span<byte> buffer) => Stop.IsCancellationRequested ? 0 : base.Read(buffer);

    /// <inheritdoc/>
    public override int ReadByte() => Stop.IsCancellationRequested ? -1 : base.ReadByte();
}
