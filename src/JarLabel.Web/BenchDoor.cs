using JarLabel.Bench;
using JarLabel.Core;

namespace JarLabel.Web;

/// <summary>Opens the shop as it is at this moment, for one request.</summary>
/// <param name="request">How the person who started the server came to the bench.</param>
/// <param name="now">The moment that counts as now, local time.</param>
public sealed class BenchDoor(BenchRequest request, Func<DateTime> now)
{
    /// <summary>The moment that counts as now.</summary>
    public DateTime Now => now();

    /// <summary>The shop.</summary>
    /// <param name="seen">How many steps of its jar the form has seen; null where that does not matter.</param>
    /// <param name="rehearse">True to work a step out and record nothing.</param>
    public Result<Workbench> Open(int? seen = null, bool rehearse = false) =>
        Workbench.Open(request with { Now = now(), Seen = seen, DryRun = request.DryRun || rehearse }, Environment.GetEnvironmentVariable);
}
