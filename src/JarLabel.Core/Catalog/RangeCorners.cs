namespace JarLabel.Core.Catalog;

/// <summary>What ranges of percent that add up to a hundred allow. Every rule for mixtures asks for a share, or for shares added up or set
/// against each other, and such a question has its worst answer at a corner: there all shares but one stand at an end of their range.</summary>
internal static class RangeCorners
{
    /// <summary>More ranges than this have too many corners to ask at each of them.</summary>
    internal const int MostRanges = 6;

    /// <summary>True when some mixture within the ranges adds up to a hundred.</summary>
    internal static bool Fit(IReadOnlyList<Part> parts) => parts.Sum(p => p.Least) <= 100 && parts.Sum(p => p.Most) >= 100;

    /// <summary>A mixture in the middle: half-way in every range, moved as far as it takes to come to a hundred, each by its share of the room that is left.</summary>
    internal static decimal[] Middle(IReadOnlyList<Part> parts)
    {
        decimal[] half = [.. parts.Select(p => (p.Least + p.Most) / 2)];
        var missing = 100 - half.Sum();
        var room = parts.Sum(p => p.Most - p.Least) / 2;
        return missing == 0 ? half : [.. parts.Select((p, i) => half[i] + (missing * (p.Most - p.Least) / 2 / room))];
    }

    /// <summary>Every corner, each once.</summary>
    internal static IReadOnlyList<decimal[]> Of(IReadOnlyList<Part> parts)
    {
        int[] open = [.. Enumerable.Range(0, parts.Count).Where(i => parts[i].IsRange)];
        var corners = new List<decimal[]>();
        foreach (var free in open)
        {
            int[] others = [.. open.Where(i => i != free)];
            for (var ends = 0; ends < 1 << others.Length; ends++)
            {
                decimal[] shares = [.. parts.Select(p => p.Least)];
                for (var bit = 0; bit < others.Length; bit++)
                {
                    shares[others[bit]] = (ends >> bit & 1) == 1 ? parts[others[bit]].Most : parts[others[bit]].Least;
                }

                shares[free] = 0;
                shares[free] = 100 - shares.Sum();
                if (shares[free] >= parts[free].Least && shares[free] <= parts[free].Most && !corners.Any(c => c.SequenceEqual(shares)))
                {
                    corners.Add(shares);
                }
            }
        }

        return corners;
    }
}
