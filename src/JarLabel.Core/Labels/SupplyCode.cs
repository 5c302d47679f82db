namespace JarLabel.Core.Labels;

/// <summary>What the code on a bag or bottle says: a few short sentences that any phone shows with no network, in the 45 signs of a code's
/// alphanumeric mode. It ends in the number with its check digit: <c>BAG 12-9</c>.</summary>
/// <param name="Kind">Bag or bottle.</param>
/// <param name="Number">Its number.</param>
public sealed partial record SupplyCode(SupplyKind Kind, SupplyNumber Number)
{
    /// <summary>The bag or bottle in a scanned or typed payload, in capitals or not; null when it is no such code.</summary>
    public static SupplyCode? Read(string payload)
    {
        if (Ending().Match(payload.Trim()) is not { Success: true } match)
        {
            return null;
        }

        var kind = match.Groups["kind"].Value.Equals("BAG", StringComparison.OrdinalIgnoreCase) ? SupplyKind.Bag : SupplyKind.Bottle;
        var read = kind == SupplyKind.Bag ? SupplyNumber.ReadBag(match.Groups["number"].Value, "") : SupplyNumber.ReadBottle(match.Groups["number"].Value, "");
        return read.TryGet(out var number, out _) ? new SupplyCode(kind, number) : null;
    }

    /// <summary>True when what was typed is no more than the end of a code, <c>BAG 12-9</c>, which does not tell one shop from another.</summary>
    public bool IsShort(string typed) => string.Equals(typed.Trim(), End(Kind, Number), StringComparison.OrdinalIgnoreCase);

    /// <summary>The payload for a bag.</summary>
    internal static string Of(Bag bag) => string.Create(
        CultureInfo.InvariantCulture,
        $"{bag.Grade.ToUpperInvariant()} FLAKES. {bag.Made:yyyy-MM-dd}. {End(SupplyKind.Bag, bag.Number)}");

    /// <summary>The payload for a bottle, with its hazard in a word or two.</summary>
    internal static string Of(Bottle bottle, string hazard) => string.Create(
        CultureInfo.InvariantCulture,
        $"{bottle.Solvent.ToUpperInvariant()}. {bottle.Since:yyyy-MM-dd}. {(hazard.Length > 0 ? $"{hazard}. " : "")}{End(SupplyKind.Bottle, bottle.Number)}");

    private static string End(SupplyKind kind, SupplyNumber number) => $"{(kind == SupplyKind.Bag ? "BAG" : "BOTTLE")} {number}";

    [GeneratedRegex(@"\b(?<kind>BAG|BOTTLE) (?<number>\d{1,9}-\d)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Ending();
}
