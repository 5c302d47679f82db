namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Classes in which each ingredient stands alone: allergy, genes, cancer, reproduction, organs.</summary>
internal static class LastingRows
{
    internal const string Table = """
        is-resp-sens-1=0.09     | -      | -      | tables 3.4.5, 3.4.6 / A.4.5
        is-resp-sens-1=0.1      | EUH208 | H334   | US from 0.1, CLP names it from 0.1
        is-resp-sens-1=0.9      | EUH208 | H334   | CLP from 1
        is-resp-sens-1=1        | H334   | H334   | CLP from 1
        is-resp-sens-1a=0.009   | -      | -      | named from 0.01
        is-resp-sens-1a=0.01    | EUH208 | -      | named from 0.01
        is-resp-sens-1a=0.09    | EUH208 | -      | both from 0.1
        is-resp-sens-1a=0.1     | H334   | H334   | both from 0.1
        is-resp-sens-1b=0.09    | -      | -      | named from 0.1
        is-resp-sens-1b=0.1     | EUH208 | -      | named from 0.1
        is-resp-sens-1b=0.9     | EUH208 | -      | both from 1
        is-resp-sens-1b=1       | H334   | H334   | both from 1
        is-skin-sens-1=0.09     | -      | -      | tables 3.4.5, 3.4.6 / A.4.5
        is-skin-sens-1=0.1      | EUH208 | H317   | US from 0.1, CLP names it from 0.1
        is-skin-sens-1=0.9      | EUH208 | H317   | CLP from 1
        is-skin-sens-1=1        | H317   | H317   | CLP from 1
        is-skin-sens-1=0.6,is-skin-sens-1-too=0.6 | EUH208 | H317 | each stands alone: 1.2 together is not 1
        is-skin-sens-1a=0.009   | -      | -      | named from 0.01
        is-skin-sens-1a=0.01    | EUH208 | -      | named from 0.01
        is-skin-sens-1a=0.09    | EUH208 | -      | both from 0.1
        is-skin-sens-1a=0.1     | H317   | H317   | both from 0.1
        is-skin-sens-1b=0.09    | -      | -      | named from 0.1
        is-skin-sens-1b=0.1     | EUH208 | -      | named from 0.1
        is-skin-sens-1b=0.9     | EUH208 | -      | both from 1
        is-skin-sens-1b=1       | H317   | H317   | both from 1
        is-muta-1a=0.09         | -      | -      | table 3.5.2 / A.5.1: from 0.1
        is-muta-1a=0.1          | H340/1A | H340/1A | from 0.1
        is-muta-1b=0.09         | -      | -      | from 0.1
        is-muta-1b=0.1          | H340/1B | H340/1B | from 0.1
        is-muta-2=0.9           | -      | -      | from 1
        is-muta-2=1             | H341   | H341   | from 1
        is-carc-1a=0.09         | -      | -      | table 3.6.2 / A.6.1: from 0.1
        is-carc-1a=0.1          | H350/1A | H350/1A | from 0.1
        is-carc-1b=0.09         | -      | -      | from 0.1
        is-carc-1b=0.1          | H350/1B | H350/1B | from 0.1
        is-carc-2=0.09          | -      | -      | below 0.1
        is-carc-2=0.1           | -      | H351   | US from 0.1
        is-carc-2=0.9           | -      | H351   | CLP below 1
        is-carc-2=1             | H351   | H351   | CLP from 1
        is-carc-2=0.05,is-carc-2-too=0.05 | - | - | each stands alone
        is-repr-1a=0.09         | -      | -      | table 3.7.2 / A.7.1: below 0.1
        is-repr-1a=0.1          | -      | H360/1A | US from 0.1
        is-repr-1a=0.29         | -      | H360/1A | CLP below 0.3
        is-repr-1a=0.3          | H360/1A | H360/1A | CLP from 0.3
        is-repr-1b=0.09         | -      | -      | below 0.1
        is-repr-1b=0.1          | -      | H360/1B | US from 0.1
        is-repr-1b=0.29         | -      | H360/1B | CLP below 0.3
        is-repr-1b=0.3          | H360/1B | H360/1B | CLP from 0.3
        is-repr-2=0.09          | -      | -      | below 0.1
        is-repr-2=0.1           | -      | H361   | US from 0.1
        is-repr-2=2.9           | -      | H361   | CLP below 3
        is-repr-2=3             | H361   | H361   | CLP from 3
        is-lact=0.09            | -      | -      | below 0.1
        is-lact=0.1             | -      | H362   | US from 0.1
        is-lact=0.29            | -      | H362   | CLP below 0.3
        is-lact=0.3             | H362   | H362   | CLP from 0.3
        is-stot-se-1=0.9        | -      | -      | table 3.8.3 / A.8.2: below 1
        is-stot-se-1=1          | H371   | H370   | CLP 1 to below 10 the milder category, US from 1
        is-stot-se-1=9.9        | H371   | H370   | CLP below 10
        is-stot-se-1=10         | H370   | H370   | CLP from 10
        is-stot-se-1=6,is-stot-se-1-too=6 | H371 | H370 | each stands alone
        is-stot-se-2=0.9        | -      | -      | below 1
        is-stot-se-2=1          | -      | H371   | US from 1
        is-stot-se-2=9.9        | -      | H371   | CLP below 10
        is-stot-se-2=10         | H371   | H371   | CLP from 10
        is-stot-re-1=0.9        | -      | -      | table 3.9.4 / A.9.4: below 1
        is-stot-re-1=1          | H373   | H372   | CLP 1 to below 10 the milder category, US from 1
        is-stot-re-1=9.9        | H373   | H372   | CLP below 10
        is-stot-re-1=10         | H372   | H372   | CLP from 10
        is-stot-re-2=0.9        | -      | -      | below 1
        is-stot-re-2=1          | -      | H373   | US from 1
        is-stot-re-2=9.9        | -      | H373   | CLP below 10
        is-stot-re-2=10         | H373   | H373   | CLP from 10
        """;
}
