namespace JarLabel.Bench.Answers;

/// <summary>How printing went: <c>printed</c>, <c>failed</c>, <c>unknown</c>, or <c>not-sent</c>.</summary>
internal sealed record PrintedJson(string Printer, string State, IReadOnlyList<int> Jobs);
