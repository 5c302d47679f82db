namespace JarLabel.Core.Air;

/// <summary>What can be wrong with a question about the air of a room.</summary>
internal static class AirProblems
{
    internal static Problem NoRoom(double cubicMeters) => new(
        "JL161", string.Create(CultureInfo.InvariantCulture, $"Read a room of {cubicMeters:0.###} m3; it must have at least 1 m3 of air in it, such as \"50 m3\"."), "room");

    internal static Problem NothingEvaporates(double milliliters) => new(
        "JL162", string.Create(CultureInfo.InvariantCulture, $"Read {milliliters:0.###} mL to evaporate; wanted is more than nothing, such as \"250 mL\"."), "evaporate");

    internal static Problem NoTime(double minutes) => new(
        "JL163", string.Create(CultureInfo.InvariantCulture, $"Read {minutes:0.###} minutes; wanted is more than nothing, such as \"1 h\"."), "over");

    internal static Problem Changes(double changes) => new(
        "JL164", string.Create(CultureInfo.InvariantCulture, $"Read {changes:0.###} air changes an hour; allowed is 0 to 1000, such as 6 for a good fan."), "changes");

    internal static Problem Mixing(double factor) => new(
        "JL165", string.Create(CultureInfo.InvariantCulture, $"Read a mixing factor of {factor:0.###}; allowed is 1, perfect, to 10, very bad."), "mixing");

    internal static Problem Fraction(double fraction) => new(
        "JL166", string.Create(CultureInfo.InvariantCulture, $"Read {fraction:0.###} as what may be left; wanted is between 0 and 1, such as 0.01."), "to");

    internal static Problem NothingVolatile(string solvent) => new(
        "JL167", $"Nothing is known of what evaporates from \"{solvent}\"; give its substances a molar mass and a vapour pressure.", "solvent");
}
