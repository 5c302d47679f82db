using System.Collections.Concurrent;

namespace JarLabel.Web.Serving;

/// <summary>Does what a form asks once, however often the form is sent, and keeps what was done for a while.</summary>
internal sealed class IdempotencyCache
{
    private const int MostKept = 256;
    private const int RunBytes = 8;
    private const int KeyBytes = 16;

    /// <summary>The mark of this run of the server, with which its keys begin.</summary>
    private readonly string run = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(RunBytes));
    private readonly ConcurrentDictionary<string, Sent> forms = new(StringComparer.Ordinal);
    private readonly ConcurrentQueue<string> order = new();

    /// <summary>A key for a form that is shown.</summary>
    internal string NewKey() => run + Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(KeyBytes));

    /// <summary>The reply to a form. One that was refused may be sent again.</summary>
    /// <param name="form">Who sends which form.</param>
    /// <param name="entry">What it holds, and its own key.</param>
    /// <param name="act">Does it; gives the reply and, when it was done, the page that tells of it.</param>
    /// <param name="old">The reply to a form that was not opened in this run.</param>
    /// <param name="other">The reply to a form that was done already with other values.</param>
    internal Reply Of(string form, FormValues entry, Func<string, (Reply Reply, DonePage? Done)> act, Func<Reply> old, Func<Reply> other)
    {
        if (entry.Text("once") is not { } key || !IsOurs(key))
        {
            return old();
        }

        var name = $"{key} {form}";
        var sent = forms.GetOrAdd(name, _ => new Sent(entry.Print, new(() => act(key))));
        try
        {
            var (reply, done) = sent.Work.Value;
            if (done is not null)
            {
                Keep(name);
                return sent.Print == entry.Print ? reply : other();
            }

            // It was refused, so that what stands in it now may be done.
            forms.TryRemove(KeyValuePair.Create(name, sent));
            return sent.Print == entry.Print ? reply : Of(form, entry, act, old, other);
        }
        catch (FaultAfterKeeping)
        {
            // Sent again, it tells the same, and does nothing.
            Keep(name);
            if (sent.Print != entry.Print)
            {
                return other();
            }

            throw;
        }
        catch
        {
            forms.TryRemove(KeyValuePair.Create(name, sent));
            throw;
        }
    }

    /// <summary>The page that tells what was done under a key; null when it is no longer kept.</summary>
    internal DonePage? Done(string key) => IsOurs(key)
        ? forms.Where(form => form.Key.StartsWith(key, StringComparison.Ordinal) && form.Value.Work.IsValueCreated).Select(form => form.Value.Work.Value.Done).FirstOrDefault()
        : null;

    private bool IsOurs(string key) => key.Length == run.Length + (2 * KeyBytes) && key.StartsWith(run, StringComparison.Ordinal) && key.All(char.IsAsciiHexDigitLower);

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

    /// <summary>A form that was sent.</summary>
    /// <param name="Print">Of what it held.</param>
    /// <param name="Work">What came of it.</param>
    private sealed record Sent(string Print, Lazy<(Reply Reply, DonePage? Done)> Work);
}

/// <summary>A fault of ours that came after something was recorded. Its form must not be sent again as if nothing had been.</summary>
/// <param name="words">What is recorded, in a sentence.</param>
/// <param name="fault">The fault.</param>
internal sealed class FaultAfterKeeping(string words, Exception fault) : Exception(fault.Message, fault)
{
    /// <summary>What is recorded, in a sentence.</summary>
    internal string Words => words;
}
