namespace JarLabel.Tests;

/// <summary>Marks a check that stands on a fact of the trade which no single source owns.</summary>
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Class)]
public sealed class CommonPracticeAttribute : Attribute;
