using JarLabel.Operations.Scanning;

namespace JarLabel.Web.Serving;

/// <summary>Reads the codes in photos that are sent: one photo at a time, so that their memory is there once, each for a while at most.</summary>
internal sealed class Photos : IDisposable
{
    /// <summary>What is under way at a time: of one host, and of all. A photo that waits is held in memory.</summary>
    private const int MostOfOne = 2, MostOfAll = 5;

    /// <summary>What a photo is called in a problem.</summary>
    private const string Where = "the photo";

    private readonly Shares shares = new(MostOfOne, MostOfAll);
    private readonly SemaphoreSlim reading = new(1);

    /// <summary>How long a photo waits for its turn.</summary>
    internal TimeSpan Turn { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>How long codes are looked for.</summary>
    internal TimeSpan Looking { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>What every code in the photo says; or the status and the problems.</summary>
    /// <param name="request">The request.</param>
    /// <param name="from">Where it comes from.</param>
    /// <param name="fits">Whether a form's mark is ours.</param>
    internal async Task<(IReadOnlyList<string> Codes, int Status, IReadOnlyList<Problem> Problems)> Read(HttpRequest request, IPAddress from, Func<string, bool> fits)
    {
        using var share = shares.Take(from);
        if (share is null)
        {
            return ([], 503, [WebProblems.PhotosBusy()]);
        }

        var (photo, status, problem) = await PhotoBody.Read(request, fits);
        using (photo)
        {
            return problem is not null ? ([], status, [problem])
                : !await reading.WaitAsync(Turn, request.HttpContext.RequestAborted) ? ([], 503, [WebProblems.PhotosBusy()])
                : await Codes(photo!, request.HttpContext.RequestAborted);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => reading.Dispose();

    /// <summary>The codes, looked for beside the threads that serve. The turn ends when the work does, not when nobody waits for it any more.</summary>
    private async Task<(IReadOnlyList<string> Codes, int Status, IReadOnlyList<Problem> Problems)> Codes(PhotoBytes photo, CancellationToken gone)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(gone);
        stop.CancelAfter(Looking);
        photo.Stop = stop.Token;
        photo.Position = 0;
        var found = await Task.Run(
            () =>
            {
                try
                {
                    return ScanJar.Photo(photo, Where, stop.Token);
                }
                finally
                {
                    reading.Release();
                }
            },
            CancellationToken.None);
        return found.TryGet(out var codes, out var problems) ? (codes, 200, [])
            : ([], 422, stop.IsCancellationRequested ? [WebProblems.PhotoTooHard()] : problems);
    }
}

/// <summary>What was read in the last photos, so that the page that tells of it can be come back to.</summary>
internal sealed class PhotoFinds
{
    private const int MostKept = 64, KeyBytes = 16;

    private readonly Lock gate = new();
    private readonly Queue<(string Key, string Device, IReadOnlyList<string> Codes)> kept = new();

    /// <summary>Keeps the codes of a photo that a device sent; gives the key to them.</summary>
    internal string Keep(string device, IReadOnlyList<string> codes)
    {
        var key = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(KeyBytes));
        lock (gate)
        {
            kept.Enqueue((key, device, codes));
            while (kept.Count > MostKept)
            {
                kept.Dequeue();
            }
        }

        return key;
    }

    /// <summary>The codes under a key of the same device; none when they are no longer kept.</summary>
    internal IReadOnlyList<string> Of(string device, string key)
    {
        lock (gate)
        {
            return kept.FirstOrDefault(one => one.Key == key && one.Device == device).Codes ?? [];
        }
    }
}
