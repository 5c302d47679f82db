namespace JarLabel.Tests.Hazards.Limits;

/// <summary>What stands in cans and jars, by the figures of the catalog: methanol 100, 300 and 3; under US rules butanone 2737 mg/kg and 28.8 mg/L, propan-2-ol
/// 36.8 mg/L, butan-1-ol 3430 mg/kg and 24.2 mg/L besides.</summary>
internal static class CanRows
{
    internal const string Table = """
        ethanol=95                                   | H225 H319 | H225 H319 | ethanol's eye class from 50
        ethanol=49.9                                 | H225 | H225 | below 50
        ethanol=95,methanol=0.9                      | H225 H319 | H225 H319 | below every limit of methanol
        ethanol=90,methanol=1                        | H225 H319 | H225 H319 H370 | A.8.2: US from 1
        ethanol=90,methanol=2.9                      | H225 H319 | H225 H319 H370 | CLP: its own limit is 3
        ethanol=90,methanol=3                        | H225 H319 H371 | H225 H319 H370 | from 3
        ethanol=90,methanol=5                        | H225 H302 H319 H371 | H225 H302 H319 H370 | oral 0.05
        ethanol=88,methanol=9.9                      | H225 H302 H319 H371 | H225 H302 H319 H370 | CLP: below 10
        ethanol=88,methanol=10                       | H225 H302 H319 H370 | H225 H302 H319 H370 | from 10
        ethanol=80,methanol=15                       | H225 H302 H312 H319 H332 H370 | H225 H302 H312 H319 H332 H370 | dermal 0.05, vapour 5
        ethanol=60,methanol=30                       | H225 H302 H311 H319 H331 H370 | H225 H302 H311 H319 H331 H370 | dermal 0.1, vapour 10
        ethanol=60,methanol=33.4                     | H225 H301 H311 H319 H331 H370 | H225 H301 H311 H319 H331 H370 | oral 0.334 of 1/3
        butanone=100                                 | H225 H319 H336 EUH066 | H225 H319 H336 | 2737 is over 2000
        methanol=3.6,butanone=39                     | H225 H319 H336 H371 EUH066 | H225 H302 H319 H336 H370 | oral 0.036, US 0.036 + 0.0142
        methanol=3.5,butanone=39                     | H225 H319 H336 H371 EUH066 | H225 H319 H336 H370 | US 0.035 + 0.0142
        methanol=4,butanone=40,ethanol=50            | H225 H319 H336 H371 EUH066 | H225 H302 H319 H336 H370 | oral 0.04, US 0.04 + 0.0146
        methanol=10,propan-2-ol=80                   | H225 H302 H319 H336 H370 | H225 H302 H319 H332 H336 H370 | vapour 3.33, US 3.33 + 2.17
        methanol=10,propan-2-ol=60                   | H225 H302 H319 H336 H370 | H225 H302 H319 H336 H370 | US 3.33 + 1.63
        methanol=8,1-butanol=92                      | H225 H302 H315 H318 H335 H336 H371 | H225 H302 H312 H315 H318 H332 H335 H336 H370 | US dermal 0.0267 + 0.0268, vapour 2.67 + 3.80; calculated near 25 °C
        1-butanol=50                                 | H226 H302 H315 H318 H335 H336 | H226 H302 H315 H318 H335 H336 | published 29 °C; oral 0.1
        methanol=0.9,1-butanol=20.6                  | H225 H302 H315 H318 H335 H336 | H225 H302 H315 H318 H335 H336 | 0.9 % of category 3 counts: 0.009 + 0.0412; calculated near 26.6 °C
        methanol=0.09,1-butanol=24.96                | H226 H315 H318 H335 H336 | H226 H315 H318 H335 H336 | 0.09 % does not: 0.0499; calculated near 28.7 °C
        acetone=50,ethanol=50                        | H225 H319 H336 EUH066 | H225 H319 H336 | 5800 is over 5000
        propan-2-ol=9.9                              | H225 | H225 | eyes below 10; published flash point
        propan-2-ol=10                               | H225 H319 | H225 H319 | eyes from 10
        ethanol=20,propan-2-ol=6                     | H225 H319 | H225 H319 | eyes 20/50 + 6/10
        """;
}
