using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>notice</c> says to a program.</summary>
internal sealed record NoticeAnswerJson(NoticeJson Notice, IReadOnlyList<Problem> Warnings);
