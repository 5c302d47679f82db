using JarLabel.Printing.Ipp;

namespace JarLabel.Printing.Transport;

/// <summary>What came of a request: an answer, or why there is none.</summary>
/// <param name="Message">The answer; null when none came.</param>
/// <param name="Fault">Why none came.</param>
/// <param name="MayHaveArrived">True when the printer may have got the request all the same.</param>
public sealed record IppAnswer(IppMessage? Message, Core.Problem? Fault, bool MayHaveArrived);
