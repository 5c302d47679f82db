namespace JarLabel.Web.Pages;

/// <summary>What the hands do, on top of a form and larger than anything else: read from a metre, and in sight while one types.</summary>
internal static class HandsPart
{
    /// <summary>The amounts under one line that says what comes of them.</summary>
    internal static Markup Of(Workbench bench, JarOutcome outcome)
    {
        var hands = HandAmount.Of(bench, outcome);
        return Html.Of(
            $"""<p class="sum">{Sum(bench, outcome)}</p>{Html.If(hands.Count > 0, () => Html.Of($"""<dl class="pours{Html.Own(hands.Count > 3 ? " many" : "")}">{hands.Select(One)}</dl>"""))}""");
    }

    private static string Sum(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        return outcome switch
        {
            { Made.Count: > 0 } => jar.Contents.IsEmpty ? "Nothing is left" : $"{Liquid(bench, jar)} is left",
            { Step: Mixed } => $"{JarTitle.Of(jar, bench.Catalog)}: makes {Liquid(bench, jar)}",
            { Step: Blended } => $"{JarTitle.Of(jar, bench.Catalog)}: {Liquid(bench, jar)}",
            _ => jar.Contents.Cut is { } cut ? $"holds then {Liquid(bench, jar)} of {CutWords.Of(cut)}" : "holds nothing more then",
        };
    }

    /// <summary>An amount that is not parted at the end of a line.</summary>
    private static string Liquid(Workbench bench, Jar jar) => (bench.Metric ? BenchAmount.Metric(jar.Contents.Liquid) : BenchAmount.Us(jar.Contents.Liquid)).Replace(' ', '\u00a0');

    private static Markup One(HandAmount hand)
    {
        var (figure, unit) = Parted(hand.Amount);
        return Html.Of($"""<div><dt>{hand.Word}</dt><dd><b class="fig">{figure} <i>{unit}</i></b><small>{hand.Also}</small></dd></div>""");
    }

    /// <summary>The figure and its unit: <c>13.4</c> and <c>fl oz</c>.</summary>
    private static (string Figure, string Unit) Parted(string amount)
    {
        var unit = amount.EndsWith(" fl oz", StringComparison.Ordinal) ? "fl oz" : amount[(amount.LastIndexOf(' ') + 1)..];
        return (amount[..^(unit.Length + 1)], unit);
    }
}
