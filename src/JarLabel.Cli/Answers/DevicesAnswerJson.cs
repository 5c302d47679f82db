namespace JarLabel.Cli.Answers;

/// <summary>What <c>serve devices</c> says to a program.</summary>
internal sealed record DevicesAnswerJson(IReadOnlyList<DeviceJson> Devices);
