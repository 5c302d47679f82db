namespace JarLabel.Web.Serving;

/// <summary>A fault of ours that came after something was recorded. Its form must not be sent again as if nothing had been.</summary>
/// <param name="words">What is recorded, in a sentence.</param>
/// <param name="fault">The fault.</param>
internal sealed class FaultAfterKeeping(string words, Exception fault) : Exception(fault.Message, fault)
{
    /// <summary>What is recorded, in a sentence.</summary>
    internal string Words => words;
}
