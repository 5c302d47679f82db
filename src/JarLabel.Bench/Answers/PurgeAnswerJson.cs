namespace JarLabel.Bench.Answers;

/// <summary>What <c>calc purge</c> says.</summary>
internal sealed record PurgeAnswerJson(double Minutes, double Fraction);
