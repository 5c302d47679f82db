using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>notice</c> says to a program.</summary>
internal sealed record NoticeAnswerJson(NoticeJson Notice, IReadOnlyList<Problem> Warnings);
