using System.Text.Json;
using System.Text.Json.Serialization;
using JarLabel.Core.Reading;
using JarLabel.Store.Files;
using JarLabel.Store.Shops;

namespace JarLabel.Web.Guards;

/// <summary>The devices that may record. A device holds a random token; the shop keeps only its hash, in a file that only its owner can
/// read.</summary>
public sealed class Devices
{
    private const int TokenBytes = 32;

    private readonly ShopFolder folder;

    private Devices(ShopFolder folder) => this.folder = folder;

    /// <summary>The shop's paired devices.</summary>
    public static Result<Devices> Open(ShopFolder folder)
    {
        var devices = new Devices(folder);
        return devices.All().Then<Devices>(_ => devices);
    }

    /// <summary>Every device, the oldest first.</summary>
    public Result<IReadOnlyList<Device>> All()
    {
        try
        {
            return File.Exists(folder.Devices)
                ? StrictJson.ReadList(Path.GetFileName(folder.Devices), WebProblems.DevicesCode, DataFile.Read(folder.Devices), One)
                : Result<IReadOnlyList<Device>>.Of([]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return WebProblems.DevicesUnreadable(folder.Devices, fault.Message);
        }
    }

    private static Device One(FieldReader fields)
    {
        var device = new Device(fields.Text("id"), fields.Text("name"), Moment(fields), fields.Text("tokenSha256"));
        if (device.TokenSha256.Length != TokenBytes * 2 || !device.TokenSha256.All(char.IsAsciiHexDigit))
        {
            fields.Refuse("tokenSha256", "Wanted are 64 hexadecimal digits, as pairing wrote them.");
        }

        return device;
    }

    private static DateTime Moment(FieldReader fields)
    {
        if (!DateTime.TryParse(fields.Text("paired"), CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment))
        {
            fields.Refuse("paired", "Wanted is local time such as 2026-03-09T14:30:00.");
        }

        return moment;
    }

    /// <summary>Takes a device's right to record.</summary>
    public Result<Device> Revoke(string id)
    {
        return ShopLock.Within(folder, () => All().Then(all =>
        {
            if (all.FirstOrDefault(d => d.Id == id.Trim()) is not { } gone)
            {
                return WebProblems.NoSuchDevice(id, all.Select(d => d.Id));
            }

            return Keep([.. all.Where(d => d != gone)]).Then<Device>(_ => gone);
        }));
    }

    /// <summary>Adds a device and gives its token, which is told once and never again.</summary>
    internal Result<string> Add(string name, DateTime now)
    {
        var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
        return ShopLock.Within(folder, () => All().Then(all =>
        {
            var id = Enumerable.Range(1, int.MaxValue).Select(n => n.ToString(CultureInfo.InvariantCulture)).First(n => all.All(d => d.Id != n));
            return Keep([.. all, new Device(id, name, now, Hash(token))]).Then<string>(_ => token);
        }));
    }

    /// <summary>Does something that only a paired device may, while no right can be taken: what it records is recorded before a
    /// <see cref="Revoke"/> is done, or not at all.</summary>
    /// <param name="device">The device.</param>
    /// <param name="work">What to do.</param>
    internal Result<T> While<T>(Device device, Func<Result<T>> work)
        where T : notnull =>
        ShopLock.Within(folder, () => All().Then(all => all.Contains(device) ? work() : WebProblems.NotPaired()));

    /// <summary>The device that holds a token; null when none does. Every device is compared, in constant time.</summary>
    internal Device? Holding(string? token)
    {
        if (token is not { Length: TokenBytes * 2 } || !All().TryGet(out var all, out _))
        {
            return null;
        }

        var hash = Convert.FromHexString(Hash(token));
        Device? found = null;
        foreach (var device in all)
        {
            if (CryptographicOperations.FixedTimeEquals(Convert.FromHexString(device.TokenSha256), hash))
            {
                found = device;
            }
        }

        return found;
    }

    private static string Hash(string token) => Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(token)));

    private Result<bool> Keep(Device[] all)
    {
        try
        {
            DurableFile.Replace(folder.Devices, JsonSerializer.SerializeToUtf8Bytes(all, DeviceContext.Default.DeviceArray), ownerOnly: true);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return WebProblems.DevicesUnreadable(folder.Devices, fault.Message);
        }
    }
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Device[]))]
internal sealed partial class DeviceContext : JsonSerializerContext;
