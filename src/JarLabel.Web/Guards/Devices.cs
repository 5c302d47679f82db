using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using JarLabel.Core;
using JarLabel.Core.Reading;
using JarLabel.Store.Files;
using JarLabel.Store.Shops;

namespace JarLabel.Web.Guards;

/// <summary>The devices that may record. A device holds a random token; the shop keeps only its hash, in a file that only its owner can
/// read.</summary>
public sealed class Devices
{
    private const int TokenBytes = 32;
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    private readonly string file;
    private readonly Lock gate = new();

    private Devices(string file) => this.file = file;

    /// <summary>The shop's paired devices.</summary>
    public static Result<Devices> Open(ShopFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var devices = new Devices(Path.Combine(folder.Path, "devices.json"));
        return devices.All().Then<Devices>(_ => devices);
    }

    /// <summary>Every device, the oldest first.</summary>
    public Result<IReadOnlyList<Device>> All()
    {
        try
        {
            return File.Exists(file)
                ? StrictJson.ReadList(Path.GetFileName(file), WebProblems.DevicesCode, DataFile.Read(file), One)
                : Result<IReadOnlyList<Device>>.Of([]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return WebProblems.DevicesUnreadable(file, fault.Message);
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
        ArgumentNullException.ThrowIfNull(id);
        lock (gate)
        {
            return All().Then(all =>
            {
                if (all.FirstOrDefault(d => d.Id == id.Trim()) is not { } gone)
                {
                    return WebProblems.NoSuchDevice(id, all.Select(d => d.Id));
                }

                return Keep([.. all.Where(d => d != gone)]).Then<Device>(_ => gone);
            });
        }
    }

    /// <summary>Adds a device and gives its token, which is told once and never again.</summary>
    internal Result<string> Add(string name, DateTime now)
    {
        lock (gate)
        {
            var token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
            return All().Then(all =>
            {
                var id = Enumerable.Range(1, int.MaxValue).Select(n => n.ToString(CultureInfo.InvariantCulture)).First(n => all.All(d => d.Id != n));
                return Keep([.. all, new Device(id, name, now, Hash(token))]).Then<string>(_ => token);
            });
        }
    }

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
        var beside = file + ".part";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
            {
                options.UnixCreateMode = OwnerOnly;
            }

            using (var stream = new FileStream(beside, options))
            {
                JsonSerializer.Serialize(stream, all, DeviceContext.Default.DeviceArray);
            }

            File.Move(beside, file, overwrite: true);
            return true;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return WebProblems.DevicesUnreadable(file, fault.Message);
        }
    }
}
