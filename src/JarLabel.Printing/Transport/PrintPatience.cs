namespace JarLabel.Printing.Transport;

/// <summary>How long a printer is waited for.</summary>
/// <param name="Connect">For the first sign of life.</param>
/// <param name="Answer">For a whole answer.</param>
/// <param name="Send">For taking a document and answering.</param>
/// <param name="Stall">For a job on which nothing moves, such as while somebody fetches paper.</param>
/// <param name="Between">Between two questions after a job, at first; later up to eight times as long.</param>
public sealed record PrintPatience(TimeSpan Connect, TimeSpan Answer, TimeSpan Send, TimeSpan Stall, TimeSpan Between)
{
    /// <summary>For people at a bench.</summary>
    public static PrintPatience Usual { get; } = new(
        TimeSpan.FromSeconds(5), TimeSpan.FromSeconds(15), TimeSpan.FromMinutes(2), TimeSpan.FromMinutes(3), TimeSpan.FromMilliseconds(250));
}
