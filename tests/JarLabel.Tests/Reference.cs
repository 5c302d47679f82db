namespace JarLabel.Tests;

/// <summary>One outside source.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Issuer">Who answers for it.</param>
/// <param name="Edition">Which edition, with the year where one is known.</param>
/// <param name="ComeBy">How the figures reached us: <c>read</c> in the source or a stored copy of it, or <c>memory</c>.</param>
public sealed record Reference(string Title, string Issuer, string Edition, string ComeBy);
