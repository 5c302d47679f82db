using JarLabel.Core;

namespace JarLabel.Store.Shops;

/// <summary>What can be wrong with a shop's settings.</summary>
internal static class ShopProblems
{
    internal const string AddressRule = "wanted is http:// or https:// with a host and perhaps a port, and no path, such as http://192.168.1.20:5080";

    internal static Problem NotAnAddress(string read, string where) => new("JL408", $"Read \"{read}\"; {AddressRule}.", where);

    internal static Problem NoSuchShelf(string name, IEnumerable<string> known, string where) =>
        new("JL409", string.IsNullOrWhiteSpace(name)
            ? Message.Of($"Read nothing as the name of a shelf; this shop has: {string.Join(", ", known)}. For example {new InputName("shelf", known.First())}.")
            : Message.Of($"There is no shelf \"{name}\"; this shop has: {string.Join(", ", known)}. A new one: {new Remedy("shop set", new InputName("setting", "shelf"), new InputName("value", $"{name}=18 C"))}"), where);

    internal static string DoubledShelf(string name) => $"The shelf \"{name}\" is there twice.";

    internal static string NotADay(string read) => $"Read \"{read}\"; wanted is a day such as 2026-06-01.";

    internal const string NoShelf = "A shop has at least one shelf.";
}
