using JarLabel.Core;

namespace JarLabel.Bench.Steps;

/// <summary>Another step under the same name: a list of batches beside a batch.</summary>
/// <param name="When">The field that calls for it.</param>
/// <param name="Step">The step.</param>
/// <param name="NotBeside">What to say of a field that only the first step has.</param>
/// <param name="OnlyWith">What to say of a field that only this one has, where nothing called for it.</param>
internal sealed record OtherStep(string When, Func<Step> Step, Func<string, Problem> NotBeside, Func<string, Problem> OnlyWith);
