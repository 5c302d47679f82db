using System.Collections.Concurrent;

namespace JarLabel.Web.Serving;

/// <summary>Does what a form asks once, however often the form is sent, and keeps what was done for a while.</summary>
internal sealed class IdempotencyCache
{
    private const int MostKept = 256;
    private const int KeyLength = 32;

    private readonly ConcurrentDictionary<string, Lazy<(Reply Reply, DonePage? Done)>> forms = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> order = new();

    /// <summary>The reply to a form. One that was refused may be sent again.</summary>
    /// <param name="form">Who sends which form.</param>
    /// <param name="key">The form's own key.</param>
    /// <param name="act">Does it; gives the reply and, when it was done, the page that tells of it.</param>
    internal Reply Of(string form, string? key, Func<string, (Reply Reply, DonePage? Done)> act)
    {
        if (key is not { Length: KeyLength } || !key.All(char.IsAsciiHexDigitLower))
        {
            return Reply.Refused(403, WebProblems.OldForm());
        }

        var name = $"{key} {form}";
        var done = forms.GetOrAdd(name, _ => new Lazy<(Reply, DonePage?)>(() => act(key)));
        try
        {
            if (done.Value.Done is not null)
            {
                Keep(name);
                return done.Value.Reply;
            }

            forms.TryRemove(name, out _);
            return done.Value.Reply;
        }
        catch (FaultAfterKeeping)
        {
            // Sent again, it tells the same, and does nothing.
            Keep(name);
            throw;
        }
        catch
        {
            forms.TryRemove(name, out _);
            throw;
        }
    }

    /// <summary>The page that tells what was done under a key; null when it is no longer kept.</summary>
    internal DonePage? Done(string key) => key.Length == KeyLength
        ? forms.Where(form => form.Key.StartsWith(key, StringComparison.Ordinal) && form.Value.IsValueCreated).Select(form => form.Value.Value.Done).FirstOrDefault()
        : null;

    private void Keep(string name)
    {
        order.Enqueue(name);
        while (order.Count > MostKept && order.TryDequeue(out var oldest))
        {
            if (!order.Contains(oldest))
            {
                forms.TryRemove(oldest, out _);
            }
        }
    }
}

/// <summary>A fault of ours that came after something was recorded. Its form must not be sent again as if nothing had been.</summary>
/// <param name="words">What is recorded, in a sentence.</param>
/// <param name="fault">The fault.</param>
internal sealed class FaultAfterKeeping(string words, Exception fault) : Exception(fault.Message, fault)
{
    /// <summary>What is recorded, in a sentence.</summary>
    internal string Words => words;
}
