namespace JarLabel.Core.Labels;

/// <summary>One event in words, for a card or a screen.</summary>
public static class HistoryWords
{
    /// <summary>What happened; null for what a card need not tell.</summary>
    public static string? Of(JarEvent happened) => happened switch
    {
        Mixed m => $"mixed {Liquid(m.Contents)}{From(m.Bag, m.Bottle)}",
        Blended b => $"blended {Liquid(b.Contents)} from jars {string.Join(", ", b.From)}",
        Decanted d => $"{Liquid(d.Contents)} decanted from jar {d.From}",
        Thinned t => $"thinned with {BenchAmount.Metric(t.Added.Poured)} of {t.Added.Solvent}{From(null, t.Bottle)}",
        Thickened t => $"thickened with {BenchAmount.Metric(t.Added.Weight)} of {t.Added.Grade} flakes{From(t.Bag, null)}",
        PouredOut p => $"{BenchAmount.Metric(p.Taken.Liquid)} poured into jar {p.To}",
        Used u => $"used {BenchAmount.Metric(u.Taken.Liquid)}{For(u.Job)}",
        Tested t => DryingWords.Of(t),
        Moved m => $"moved to shelf {m.Shelf}",
        Redated { Shelf: { } shelf } r => $"dated anew by how warm shelf {shelf} is or was: use-by {DateWords.Estimate(r.Dates.UseBy)}",
        Redated { Setting: Redated.OfFlakes } => "its flakes were found to be going off: dated anew",
        Redated { Setting: Redated.OfSoundFlakes } r => $"what was said against its flakes was taken back: use-by {DateWords.Estimate(r.Dates.UseBy)}",
        Redated { Setting: not null } r => $"the shop settled anew how jars keep: use-by {DateWords.Estimate(r.Dates.UseBy)}",
        Redated r => $"use-by by this shop's tests {DateWords.Estimate(r.Dates.UseBy)}",
        Noted n => $"note: {n.Text}",
        Discarded d => $"discarded{For(d.Why)}",
        Undone u => $"taken back: {TookBack(u.What)}",
        _ => null,
    };

    /// <summary>Day and words of all that a card or a screen tells, each that was taken back said to be so.</summary>
    public static IEnumerable<(string Day, string What)> All(IReadOnlyList<JarEvent> events)
    {
        var taken = JarLife.TakenBack(events);
        return events.Select((happened, place) => (DateWords.Of(DateOnly.FromDateTime(happened.At)), What: Of(happened) is { } words ? words + (taken[place] ? " (taken back)" : "") : null))
            .Where(row => row.What is not null)!;
    }

    private static string Liquid(Contents contents) =>
        contents.Cut is { } cut ? $"{BenchAmount.Metric(contents.Liquid)} of {CutWords.Of(cut)}" : BenchAmount.Metric(contents.Liquid);

    private static string From(SupplyNumber? bag, SupplyNumber? bottle) => (bag, bottle) switch
    {
        ({ } flakes, { } alcohol) => $" from bag {flakes} and bottle {alcohol}",
        ({ } flakes, null) => $" from bag {flakes}",
        (null, { } alcohol) => $" from bottle {alcohol}",
        _ => "",
    };

    private static string For(string? text) => text is null ? "" : $": {text}";

    private static string TookBack(string what) => what switch
    {
        nameof(PouredOut) => "the pouring out",
        nameof(Noted) => "the note",
        _ => $"\"{what.ToLowerInvariant()}\"",
    };
}
