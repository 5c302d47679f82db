namespace JarLabel.Core.Supplies;

/// <summary>What should be known after a pinch of a bag was tried.</summary>
public static class BagCautions
{
    /// <summary>What to say of the bag, and of what was mixed from it before.</summary>
    /// <param name="bag">The bag.</param>
    /// <param name="standing">The jars that stand with flakes of it, also those poured from another; null for all that were mixed from it.</param>
    public static IReadOnlyList<Problem> OfTest(Bag bag, IReadOnlyList<JarNumber>? standing = null)
    {
        JarNumber[] jars = [.. (standing ?? [.. bag.Taken.Select(t => t.Jar)]).Distinct().Order()];
        return bag.Test is not { } test ? [] :
        [
            .. test.Pinch == Pinch.Gel ? [Gelled(bag)] : test.Pinch == Pinch.Cloudy ? [Clouded(bag)] : Array.Empty<Problem>(),
            .. bag.Worst > test.Pinch ? [WorseBefore(bag, bag.Worst.Value)] : Array.Empty<Problem>(),
            .. test.Pinch != Pinch.All && jars.Length > 0 ? [MixedBefore(bag, jars)] : Array.Empty<Problem>(),
        ];
    }

    /// <summary>What to say of jars that were mixed from it before.</summary>
    public static Problem OfJars(Bag bag, IReadOnlyList<JarNumber> jars) => new("JL397", Message.Of(
        $"A pinch of bag {bag.Number} came out {PinchWords.Of(bag.Bad!.Pinch)} on {DateWords.Of(bag.Bad.Day)}, and {(jars.Count == 1 ? "jar" : "jars")} {string.Join(", ", jars)} {(jars.Count == 1 ? "holds" : "hold")} flakes of it from before. Try a few drops of {(jars.Count == 1 ? "it" : "each")} on glass before any use: until they dry hard no use-by holds. When {(jars.Count == 1 ? "they" : $"those of jar {jars[0]}")} dry hard: {new Remedy("test", new InputName("jar", $"{jars[0].Value}"), new InputName("verdict", "pass"))}{(jars.Count == 1 ? "" : ", and so for each")}."), "jar");

    private static Problem Gelled(Bag bag) =>
        new("JL394", Message.Of($"Bag {bag.Number} is unfit: flakes that swell to a gel do not dissolve any more, and what does will not dry hard. Nothing is mixed from it; {new Remedy("bag discard", new InputName("bag", $"{bag.Number.Value}"))} takes it out of the shop."), "bag");

    private static Problem Clouded(Bag bag) =>
        new("JL395", $"The flakes of bag {bag.Number} are going off: what is mixed from it is given half the time or less. Mix little, strain it, and try a few drops on glass before use.", "bag");

    private static Problem WorseBefore(Bag bag, Pinch worst) =>
        new("JL396", $"A pinch of bag {bag.Number} came out {PinchWords.Of(worst)} before; flakes do not get better. The newest test counts, but try one more pinch, well stirred, in fresh alcohol of 95 % or more.", "bag");

    private static Problem MixedBefore(Bag bag, JarNumber[] jars) =>
        new("JL397", $"Mixed from bag {bag.Number} before: {(jars.Length == 1 ? "jar" : "jars")} {string.Join(", ", jars)}. Try a few drops of {(jars.Length == 1 ? "it" : "each")} on glass before any use: until they dry hard no use-by holds.", "bag");
}
