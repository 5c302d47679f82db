using System.Diagnostics;
using System.Globalization;
using JarLabel.Store;
using JarLabel.Store.Index;
using JarLabel.Store.Shops;

namespace JarLabel.Hand;

/// <summary>A shop with very many jars, to see that everyday things cost no more there than in a new one.</summary>
public static class BigShop
{
    private const int JarsAtOnce = 1000;
    private const string At = "2026-03-09T14:30:00";

    public static int Fill(ShopFolder folder, int jars)
    {
        using var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require();
        for (var made = 0; made < jars; made += JarsAtOnce)
        {
            var next = Math.Min(JarsAtOnce, jars - made);
            ledger.Record<int>(step => Add(step, next)).Require();
        }

        return 0;
    }

    public static int Measure(ShopFolder folder, int rounds)
    {
        using var ledger = Ledger.Open(folder, LedgerMode.Write, new PlainJars()).Require();
        var jars = ledger.Look(view => view.LastNumber(SubjectKind.Jar)).Require();
        var random = new Random(1);
        Tell("jar", rounds, () => ledger.Look(view => view.EventsOf(Subject.Jar(random.Next(jars) + 1))).Require());
        Tell("shelf page", rounds, () => ledger.Look(view => view.Shelf(new ShelfQuery())).Require());
        Tell("shelf page of a shelf", rounds, () => ledger.Look(view => view.Shelf(new ShelfQuery(Shelf: "shelf 3"))).Require());
        Tell("shelf page due", rounds, () => ledger.Look(view => view.Shelf(new ShelfQuery(Due: new DateOnly(2026, 7, 20)))).Require());
        Tell("shelf totals", rounds, () => ledger.Look(view => view.ShelfTotals()).Require());
        Tell("append", rounds, () => ledger.Record<int>(step => Add(step, 1)).Require());
        Tell("open and close to read", rounds, () => Ledger.Open(folder, LedgerMode.Read, new PlainJars()).Require().Dispose());
        return 0;
    }

    public static int Jar(ShopFolder folder, int jar)
    {
        using var ledger = Ledger.Open(folder, LedgerMode.Read, new PlainJars()).Require();
        return ledger.Look(view => view.EventsOf(Subject.Jar(jar))).Require().Count > 0 ? 0 : 2;
    }

    private static int Add(LedgerStep step, int jars)
    {
        for (var i = 0; i < jars; i++)
        {
            var jar = Subject.Jar(step.NextNumber(SubjectKind.Jar));
            var keeps = string.Create(CultureInfo.InvariantCulture, $"{{\"ml\":402.5,\"shelf\":\"shelf {jar.Number % 5}\",\"keeps\":{100 + (jar.Number * 7919L % 300)}}}");
            step.Append(jar, At, "Mixed", 1, keeps);
            step.Append(jar, At, "Labelled", 1, "{\"file\":\"none\"}");
            step.Append(jar, At, "Thinned", 2, "{\"ml\":12.25}");
            step.Append(jar, At, "Labelled", 2, "{\"file\":\"none\"}");
            step.Append(jar, At, "Thinned", 3, "{\"ml\":1.5}");
        }

        return jars;
    }

    private static void Tell(string what, int rounds, Action work)
    {
        var times = new List<double>();
        for (var i = 0; i < rounds; i++)
        {
            var since = Stopwatch.GetTimestamp();
            work();
            times.Add(Stopwatch.GetElapsedTime(since).TotalMicroseconds);
        }

        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {times.Order().ElementAt(rounds / 2):0} us"));
    }
}
