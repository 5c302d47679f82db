namespace JarLabel.Web.Guards;

/// <summary>A telephone or tablet that may record.</summary>
/// <param name="Id">Its number in the list.</param>
/// <param name="Name">What its owner called it.</param>
/// <param name="Paired">When it was paired, local time.</param>
/// <param name="TokenSha256">The hash of its token, hexadecimal.</param>
public sealed record Device(string Id, string Name, DateTime Paired, string TokenSha256);
