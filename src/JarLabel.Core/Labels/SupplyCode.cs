namespace JarLabel.Core.Labels;

/// <summary>What the code on a bag or bottle says: a few short sentences that any phone shows with no network, in the 45 signs of a code's
/// alphanumeric mode. It ends in the number with its check digit: <c>BAG 12-9</c>.</summary>
/// <param name="Kind">Bag or bottle.</param>
/// <param name="Number">Its number.</param>
public sealed partial record SupplyCode(SupplyKind Kind, SupplyNumber Number)
{
    /// <summary>The bag or bottle in a scanned or typed payload, in capitals or not, or its end as a hand writes it; null when it is no such code.</summary>
    public static SupplyCode? Read(string payload)
    {
        if (Ending().Match(payload.Trim()) is var match && !match.Success && !(match = Short().Match(payload.Trim())).Success)
        {
            return null;
        }

        var kind = match.Groups["kind"].Value.Equals("BAG", StringComparison.OrdinalIgnoreCase) ? SupplyKind.Bag : SupplyKind.Bottle;
        var read = kind == SupplyKind.Bag ? SupplyNumber.ReadBag(match.Groups["number"].Value, "") : SupplyNumber.ReadBottle(match.Groups["number"].Value, "");
        return read.TryGet(out var number, out _) ? new SupplyCode(kind, number) : null;
    }

    /// <summary>True when what was typed is no more than the end of a code, <c>BAG 12-9</c>, which does not tell one shop from another.</summary>
    public bool IsShort(string typed) => Short().Match(typed.Trim()) is { Success: true } match && match.Groups["number"].Value.Split('-')[0] == Number.Value.ToString(CultureInfo.InvariantCulture);

    /// <summary>The end of a code alone.</summary>
    public static string Brief(SupplyKind kind, SupplyNumber number) => End(kind, number);

    /// <summary>The payload for a bag.</summary>
    internal static string Of(Bag bag) => string.Create(
        CultureInfo.InvariantCulture,
        $"{bag.Grade.ToUpperInvariant()} FLAKES. {bag.Made:yyyy-MM-dd}. {End(SupplyKind.Bag, bag.Number)}");

    /// <summary>The payload for a bottle, with its hazard in a word or two.</summary>
    internal static string Of(Bottle bottle, string hazard) => string.Create(
        CultureInfo.InvariantCulture,
        $"{bottle.Solvent.ToUpperInvariant()}. {bottle.Since:yyyy-MM-dd}. {(hazard.Length > 0 ? $"{hazard}. " : "")}{End(SupplyKind.Bottle, bottle.Number)}");

    private static string End(SupplyKind kind, SupplyNumber number) => $"{(kind == SupplyKind.Bag ? "BAG" : "BOTTLE")} {number}";

    // As a hand writes it, with or without the check digit.
    [GeneratedRegex(@"^(?<kind>BAG|BOTTLE)\s*(?<number>\d{1,9}(?:-\d)?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Short();

    [GeneratedRegex(@"\b(?<kind>BAG|BOTTLE) (?<number>\d{1,9}-\d)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Ending();
}
