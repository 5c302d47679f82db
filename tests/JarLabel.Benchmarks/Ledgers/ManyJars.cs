using System.Globalization;
using JarLabel.Core.Jars;
using JarLabel.Operations.Recording;
using JarLabel.Store;
using JarLabel.Store.Shops;

namespace JarLabel.Benchmarks.Ledgers;

/// <summary>Fills a shop with jars like its first one, of five events each: mixed, labelled, used, noted, and in the end used up,
/// but for one in a hundred that still stands on the shelf; or none used up.</summary>
internal static class ManyJars
{
    private const int AtOnce = 1000;

    /// <summary>Adds them and gives the number of events that the shop then has.</summary>
    internal static long AddTo(string shop, int jars, bool usedUp)
    {
        using var ledger = Ledger.Open(ShopFolder.At(shop).Require(), LedgerMode.Write, JarReader.Instance).Require();
        var first = ledger.Look(view => view.EventsOf(Subject.Jar(1))).Require();
        var mixed = (Mixed)JarEventJson.Read(first.Single(row => row.Kind == nameof(Mixed)).Body, "jar 1").Require();
        var label = first.Single(row => row.Kind == nameof(Labelled)).Body;
        for (var made = 0; made < jars; made += AtOnce)
        {
            var next = Math.Min(AtOnce, jars - made);
            ledger.Record<int>(step => Add(step, mixed, label, next, usedUp)).Require();
        }

        return first.Count + (5L * jars);
    }

    private static int Add(LedgerStep step, Mixed like, string label, int jars, bool usedUp)
    {
        for (var i = 0; i < jars; i++)
        {
            var jar = Subject.Jar(step.NextNumber(SubjectKind.Jar));
            var mixed = like with { Dates = like.Dates with { UseBy = like.Dates.UseBy.AddDays((int)(jar.Number * 7919L % 300)) } };
            var used = JarEventJson.Write(new Used(like.At, like.Contents.Share(0.1), "a violin back"));
            var at = like.At.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);
            step.Append(jar, at, nameof(Mixed), 1, JarEventJson.Write(mixed));
            step.Append(jar, at, nameof(Labelled), 1, label);
            step.Append(jar, at, nameof(Used), 1, used);
            step.Append(jar, at, nameof(Noted), 1, JarEventJson.Write(new Noted(like.At, "strained")));
            if (!usedUp || jar.Number % 100 == 0)
                step.Append(jar, at, nameof(Used), 1, used);
            else
                step.Append(jar, at, nameof(Discarded), 1, JarEventJson.Write(new Discarded(like.At, "used up")));
        }

        return jars;
    }
}
