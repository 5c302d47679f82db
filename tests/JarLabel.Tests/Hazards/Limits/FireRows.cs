namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Flammable liquids. <c>flash-22-boils-35</c> is a made-up liquid of that flash and boiling point, <c>flash-27-boils-80-too</c> another like it: two of
/// one flash point have a mixture that is calculated to flash there as well.</summary>
internal static class FireRows
{
    internal const string Table = """
        flash-22-boils-35=100                            | H224 | H224 | table 2.6.1 / B.6: below 23 and boiling by 35
        flash-22-boils-36=100                            | H225 | H225 | boiling after 35
        flash-23-boils-35=100                            | H226 | H226 | not below 23
        flash-22-boils-80=100                            | H225 | H225 | below 23
        flash-23-boils-80=100                            | H226 | H226 | 23 is category 3
        flash-24-boils-80=100                            | H226 | H226 | published, not calculated: no distance is asked
        flash-60-boils-160=100                           | H226 | H226 | up to 60
        flash-61-boils-160=100                           | -    | H227 | over 60: category 4 is the US's alone
        flash-93-boils-200=100                           | -    | H227 | up to 93
        flash-94-boils-200=100                           | -    | -    | over 93
        flash-22-boils-80=1                              | H225 | H225 | a hundredth of what burns still counts
        flash-22-boils-80=0.9                            | -    | -    | less does not
        flash-22-boils-80=60,shellac-resin=40            | H225 | H225 | dissolved resin raises nothing
        flash-27-boils-35=50,flash-27-boils-35-too=50    | H224 | H224 | 2.6.4.2: calculated 27, less than 5 above 23
        flash-28-boils-35=50,flash-28-boils-35-too=50    | H226 | H226 | calculated 28, 5 above 23
        flash-27-boils-80=50,flash-27-boils-80-too=50    | H225 | H225 | calculated 27, less than 5 above 23
        flash-28-boils-80=50,flash-28-boils-80-too=50    | H226 | H226 | calculated 28, 5 above 23
        flash-64-boils-160=50,flash-64-boils-160-too=50  | H226 | H226 | calculated 64, less than 5 above 60
        flash-65-boils-160=50,flash-65-boils-160-too=50  | -    | H227 | calculated 65, 5 above 60
        flash-97-boils-200=50,flash-97-boils-200-too=50  | -    | H227 | calculated 97, less than 5 above 93
        flash-98-boils-200=50,flash-98-boils-200-too=50  | -    | -    | calculated 98, 5 above 93
        ethanol=28                                       | H225 | H225 | 33.9 % by volume, between 29 and 26 in the table: 27.8, less than 5 above 23
        ethanol=26.5                                     | H226 | H226 | 32.2 % by volume: 28.4
        unknown=1                                        | H225 | H225 | what nobody has declared may burn
        unknown=0.9                                      | -    | -    | less than a hundredth of it
        """;
}
