using System.Globalization;
using JarLabel.Web.Guards;

namespace JarLabel.Cli.Answers;

/// <summary>A paired device for a program; its token is known to it alone.</summary>
internal sealed record DeviceJson(string Id, string Name, string Paired)
{
    internal static DeviceJson Of(Device device) => new(device.Id, device.Name, device.Paired.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture));
}
