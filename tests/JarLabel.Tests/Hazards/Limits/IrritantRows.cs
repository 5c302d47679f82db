namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Classes in which shares add up, each over its limit. <c>is-eye-irrit-2</c> is a made-up ingredient of that class and no other, with <c>-too</c> a second one.</summary>
internal static class IrritantRows
{
    internal const string Table = """
        is-skin-irrit-2=9.9                              | -         | -         | table 3.2.3 / A.2.3: below 10
        is-skin-irrit-2=10                               | H315      | H315      | from 10
        is-skin-irrit-2=5,is-skin-irrit-2-too=5          | H315      | H315      | like ingredients add up
        is-skin-irrit-2=9.2,is-skin-irrit-2-too=0.9      | -         | -         | below 1 % it is left out
        is-skin-irrit-2=9,is-skin-irrit-2-too=1          | H315      | H315      | from 1 % it counts
        is-skin-corr-1=0.9                               | -         | -         | table 1.1: below 1 % it is left out
        is-skin-corr-1=1                                 | H315 H319 | H315 H319 | ten times a corrosive one: from 1
        is-skin-corr-1=0.9,is-skin-irrit-2=5             | -         | -         | counted it would be 9 + 5
        is-skin-corr-1=1,is-skin-irrit-2=1               | H315 H319 | H315 H319 | 10 + 1
        is-skin-corr-1=2.9                               | H315 H319 | H315 H319 | table 3.3.3 / A.3.3: eyes below 3
        is-skin-corr-1=3                                 | H315 H318 | H315 H318 | eyes from 3
        is-skin-corr-1=4.9                               | H315 H318 | H315 H318 | skin below 5
        is-skin-corr-1=5                                 | H314 H318 | H314 H318 | skin from 5
        is-skin-corr-1=4,is-skin-corr-1-too=1            | H314 H318 | H314 H318 | 4 + 1
        is-skin-corr-1=4.2,is-skin-corr-1-too=0.9        | H315 H318 | H315 H318 | the second is left out
        is-eye-irrit-2=9.9                               | -         | -         | table 3.3.3 / A.3.3: below 10
        is-eye-irrit-2=10                                | H319      | H319      | from 10
        is-eye-irrit-2=9.2,is-eye-irrit-2-too=0.9        | -         | -         | the second is left out
        is-eye-irrit-2=9,is-eye-irrit-2-too=1            | H319      | H319      | from 1 % it counts
        is-eye-dam-1=0.9                                 | -         | -         | below 1 % it is left out
        is-eye-dam-1=1                                   | H319      | H319      | ten times it: from 1
        is-eye-dam-1=0.9,is-eye-irrit-2=5                | -         | -         | counted it would be 9 + 5
        is-eye-dam-1=2.9                                 | H319      | H319      | below 3
        is-eye-dam-1=3                                   | H318      | H318      | from 3
        is-eye-dam-1=1,is-skin-corr-1=2                  | H315 H318 | H315 H318 | a corrosive one counts for eyes: 1 + 2 of 3
        is-eye-dam-1=0.9,is-skin-corr-1=2.5              | H315 H319 | H315 H319 | the first is left out
        is-eye-dam-1=1,is-eye-dam-1-too=1,is-skin-corr-1=1 | H315 H318 | H315 H318 | three thirds are a whole
        is-stot-se-3-airways=19.9                        | -         | -         | 3.8.3.4.5 / A.8.3.4.4: below 20
        is-stot-se-3-airways=20                          | H335      | H335      | from 20
        is-stot-se-3-airways=19.2,is-stot-se-3-airways-too=0.9 | -   | -         | the second is left out
        is-stot-se-3-airways=19,is-stot-se-3-airways-too=1 | H335    | H335      | 19 + 1
        is-stot-se-3-narcosis=19.9                       | -         | -         | below 20
        is-stot-se-3-narcosis=20                         | H336      | H336      | from 20
        is-stot-se-3-narcosis=19.2,is-stot-se-3-narcosis-too=0.9 | - | -         | the second is left out
        is-stot-se-3-narcosis=19,is-stot-se-3-narcosis-too=1 | H336  | H336      | 19 + 1
        is-stot-se-3-narcosis=10,is-stot-se-3-airways=10 | -         | -         | sleep and airways do not add up
        is-asp-1=9.9                                     | -         | -         | 3.10.3.3.1.1 / A.10.3.3.1: below 10
        is-asp-1=10                                      | H304      | H304      | from 10, every jar counting as thin
        is-asp-1=9.2,is-asp-1-too=0.9                    | -         | -         | the second is left out
        is-asp-1=9,is-asp-1-too=1                        | H304      | H304      | 9 + 1
        is-asp-1=10,shellac-resin=45                     | H304      | H304      | also with much resin: nobody measured how thick it is
        """;
}
