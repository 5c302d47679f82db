using System.Text.Json.Nodes;
using TestResult = JarLabel.Core.Jars.TestResult;

namespace JarLabel.Tests.Jars;

/// <summary>Whole lives of jars, made at random: what goes in stays in, is poured on, or was used.</summary>
public class JarLifeTests
{
    private static readonly DateTime Day = new(2026, 3, 9, 10, 0, 0);
    private static readonly string[] Grades = ["garnet", "blonde"];
    private static readonly string[] Solvents = ["ethanol-95", "isopropanol-99"];

    private static readonly Gen<(int Kind, int Jar, int What, double Part)> AnyStep = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 99], Gen.Int[0, 1], Gen.Double[0.05, 1]);
    private static readonly Gen<Mixed> AnyMix = Gen.Select(Gen.Double[0.2, 6], Gen.Double[50, 2000], Gen.Int[0, 1], Gen.Int[0, 1]).Select((cut, pour, g, s) => Mix(cut, pour, Grades[g], Solvents[s]));

    [Fact]
    public void Flakes_of_each_grade_and_each_solvent_are_conserved_over_any_life_of_a_shop() =>
        Gen.Select(AnyMix.Array[2, 4], AnyStep.Array[1, 40]).Sample((mixes, steps) =>
        {
            var bench = new RandomBench(mixes);
            foreach (var (kind, jar, what, part) in steps)
            {
                bench.Do(kind, jar, what, part);
            }

            foreach (var grade in Grades)
            {
                Near(bench.Put(grade), bench.There(c => c.Resins.Where(r => r.Grade == grade).Sum(r => r.Weight.Grams)));
            }

            foreach (var solvent in Solvents)
            {
                Near(bench.Put(solvent), bench.There(c => c.Solvents.Where(s => s.Solvent == solvent).Sum(s => s.Poured.Milliliters)));
            }
        });

    [Fact]
    public void Thinned_and_thickened_back_a_jar_has_the_same_cut() =>
        Gen.Select(AnyMix, Gen.Double[0.1, 0.95]).Sample((mixed, part) =>
        {
            var number = JarNumber.From(1);
            var cut = mixed.Contents.Cut!.Value;
            var weaker = PoundCut.FromPoundsPerUsGallon(cut.PoundsPerUsGallon * part);
            var thinned = Thin(Jar.Fold(number, [mixed]).Require(), weaker, mixed.Contents.Solvents[0].Solvent);
            var weak = Jar.Fold(number, [mixed, thinned]).Require();
            Near(weaker.PoundsPerUsGallon, weak.Contents.Cut!.Value.PoundsPerUsGallon);
            var back = Jar.Fold(number, [mixed, thinned, Thicken(weak, cut, mixed.Contents.Resins[0].Grade)]).Require();
            Near(cut.PoundsPerUsGallon, back.Contents.Cut!.Value.PoundsPerUsGallon);
            Assert.Equal(3, back.Revision);
        });

    [Fact]
    public void Taking_back_the_last_event_gives_the_jar_as_it_was() =>
        Gen.Select(AnyMix, Gen.Int[0, 6].Array[0, 6], Gen.Int[0, 6]).Sample((mixed, earlier, last) =>
        {
            var number = JarNumber.From(1);
            List<JarEvent> events = [mixed];
            foreach (var kind in earlier)
            {
                events.Add(Some(kind, Jar.Fold(number, events).Require()));
            }

            var before = Jar.Fold(number, events).Require();
            events.Add(Some(last, before));
            var changed = Jar.Fold(number, events).Require();
            events.Add(new Labelled(Day, changed.Revision, "labels/a.pdf", "standard", "a4", 1, "JAR 1-9.2"));
            events.Add(JarLife.Of(number, events).Require().Undo(Day).Require());
            var after = Jar.Fold(number, events).Require();
            Assert.Equal(Told(before), Told(after));
            Assert.Equal(events.Count(e => e.ChangesContents), after.Revision);
        });

    [Fact]
    public void Use_by_never_grows_by_thinning_or_thickening() =>
        Gen.Select(AnyMix, Gen.Int[0, 6].Array[1, 8]).Sample((mixed, kinds) =>
        {
            var number = JarNumber.From(1);
            List<JarEvent> events = [mixed];
            var useBy = mixed.Dates.UseBy;
            foreach (var kind in kinds)
            {
                events.Add(Some(kind, Jar.Fold(number, events).Require()));
                var jar = Jar.Fold(number, events).Require();
                Assert.True(jar.Dates.UseBy <= useBy);
                Assert.Equal(mixed.At, jar.MixedAt);
                useBy = jar.Dates.UseBy;
            }
        });

    /// <summary>Nobody did the other dates, so nobody means them by "the last step".</summary>
    [Fact]
    public void Taking_back_takes_the_last_step_and_not_the_dates_that_followed_it()
    {
        var number = JarNumber.From(7);
        var mixed = Mix(2, 300, "garnet", "ethanol-95");
        var sooner = mixed.Dates with { UseBy = mixed.Dates.UseBy.AddDays(-60) };
        JarEvent[] events = [mixed, new Used(Day, mixed.Contents.Share(0.5)), new Redated(Day, sooner)];
        var life = JarLife.Of(number, events).Require();
        Assert.Equal(sooner, life.Jar.Dates);
        Assert.Equal(["Used", "Mixed"], life.Standing.Select(e => e.Name));
        var undone = life.Undo(Day).Require();
        Assert.Equal("Used", undone.What);
        Assert.Equal(mixed.Contents.Flakes, Jar.Fold(number, [.. events, undone]).Require().Contents.Flakes);
        Assert.Equal(mixed.Dates, Jar.Fold(number, [.. events, new Undone(Day, "Redated", true)]).Require().Dates); // as ledgers of before have it
        var later = JarLife.Of(number, [.. events, new Noted(Day, "strained")]).Require();
        Assert.Equal(sooner, Jar.Fold(number, [.. events, new Noted(Day, "strained"), later.Undo(Day).Require()]).Require().Dates);
    }

    [Fact]
    public void A_jar_with_everything_taken_back_stands_on_no_shelf_and_has_no_more_to_undo()
    {
        var number = JarNumber.From(7);
        var mixed = Mix(2, 300, "garnet", "ethanol-95");
        var life = JarLife.Of(number, [mixed, JarLife.Of(number, [mixed]).Require().Undo(Day).Require()]).Require();
        Assert.False(life.Jar.OnShelf);
        Assert.Equal(JarState.TakenBack, life.Jar.StateAt(Day));
        Assert.Equal("JL145", Assert.Single(life.Undo(Day).Problems).Code);
        Assert.Equal("JL144", Assert.Single(life.Jar.DemandOnShelf().Problems).Code);
    }

    [Fact]
    public void Taking_back_what_was_not_last_is_no_jars_life()
    {
        var mixed = Mix(2, 300, "garnet", "ethanol-95");
        Assert.Equal("JL480", Assert.Single(Jar.Fold(JarNumber.From(7), [mixed, new Undone(Day, "Thinned", true)]).Problems).Code);
    }

    [Fact]
    public void The_last_drops_are_all_there_is_and_more_is_refused()
    {
        var jar = Jar.Fold(JarNumber.From(7), [Mix(1.5, 350, "garnet", "ethanol-95")]).Require(); // 402.5 mL, by hand: 350 x (1 + 0.1 x 1.5)
        Assert.Same(jar.Contents, jar.Take(Volume.FromMilliliters(402), "volume").Require());
        Assert.Equal(100, jar.Take(Volume.FromMilliliters(100), "volume").Require().Liquid.Milliliters, 1e-9);
        Assert.Equal("JL146", Assert.Single(jar.Take(Volume.FromMilliliters(410), "volume").Problems).Code);
        var empty = Jar.Fold(JarNumber.From(7), [Mix(1.5, 350, "garnet", "ethanol-95"), new Used(Day, jar.Contents)]).Require();
        Assert.True(empty.Contents.IsEmpty);
        Assert.False(empty.OnShelf);
        Assert.Equal("garnet", empty.Held.Resins[0].Grade);
    }

    [Theory]
    [InlineData("2026-07-09", null, null, JarState.Test)]
    [InlineData("2026-07-09", "2026-07-09", true, JarState.Good)]
    [InlineData("2026-08-08", "2026-07-09", true, JarState.Good)]
    [InlineData("2026-08-09", "2026-07-09", true, JarState.Test)]
    [InlineData("2026-11-10", "2026-11-09", true, JarState.Past)]
    [InlineData("2026-04-01", "2026-04-01", false, JarState.Past)]
    public void A_test_that_passed_holds_for_thirty_days_and_a_failure_ends_the_use(string day, string? tested, bool? passed, JarState state)
    {
        var dates = new KeepingDates(Day.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));
        var test = tested is null ? null : new TestResult(DateOnly.Parse(tested, System.Globalization.CultureInfo.InvariantCulture), passed!.Value);
        Assert.Equal(state, dates.StateAt(DateTime.Parse(day + "T12:00", System.Globalization.CultureInfo.InvariantCulture), test));
    }

    [Fact]
    public void Every_event_reads_back_as_it_was_written()
    {
        var jar = Jar.Fold(JarNumber.From(7), [Mix(2, 300, "garnet", "ethanol-95")]).Require();
        JarEvent[] events =
        [
            Mix(2, 300, "garnet", "ethanol-95"),
            .. Enumerable.Range(0, 7).Select(kind => Some(kind, jar)),
            new Blended(Day, jar.Contents, jar.Container, jar.Dates, "main", Day, [JarNumber.From(1), JarNumber.From(2)], Test: new TestResult(new DateOnly(2026, 3, 9), true)),
            new Decanted(Day, jar.Contents, jar.Container, jar.Dates, "main", Day, JarNumber.From(1), Changed: new LastChange("thinned", Day)),
            new PouredOut(Day, jar.Contents, JarNumber.From(9)),
            new Redated(Day, jar.Dates),
            new Redated(Day, jar.Dates) { Shelf = "attic" },
            new Labelled(Day, 1, "labels/a.pdf", "standard", "a4", 1, "JAR 142-5.1"),
            new Discarded(Day, "stays tacky"),
            new Undone(Day, "Thinned", true),
        ];
        foreach (var happened in events)
        {
            var written = JarEventJson.Write(happened);
            Assert.Equal(written, JarEventJson.Write(JarEventJson.Read(written, "event 1").Require()));
            Assert.StartsWith($"{{\"event\":\"{happened.Name}\"", written, StringComparison.Ordinal);
            var spaced = JsonNode.Parse(written)!.ToJsonString(new JsonSerializerOptions { WriteIndented = true });
            Assert.Equal(written, JarEventJson.Write(JarEventJson.Read(spaced, "event 1").Require()));
            var more = Assert.Single(JarEventJson.Read($"{written[..^1]},\"more\":1}}", "event 1").Problems);
            Assert.Equal("JL401", more.Code);
        }

        var kinds = typeof(JarEvent).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(JarEvent))).Select(type => type.Name);
        Assert.Equal(kinds.Order(StringComparer.Ordinal), events.Select(happened => happened.Name).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>All there is to a jar but its revision, in one line.</summary>
    private static string Told(Jar jar) => jar.OnShelf + JarEventJson.Write(
        new Decanted(Day, jar.Contents, jar.Container, jar.Dates, jar.Shelf, jar.MixedAt, jar.Number, jar.By, jar.Job, jar.Note, jar.Test, jar.Changed));

    private static void Near(double wanted, double found) => Assert.Equal(wanted, found, Math.Max(1e-6, Math.Abs(wanted) * 1e-9));

    private static JarEvent Some(int kind, Jar jar) => kind switch
    {
        0 => Thin(jar, PoundCut.FromPoundsPerUsGallon(jar.Contents.Cut!.Value.PoundsPerUsGallon * 0.8), "isopropanol-99"),
        1 when jar.Contents.Cut!.Value.PoundsPerUsGallon < 6 => Thicken(jar, PoundCut.FromPoundsPerUsGallon(jar.Contents.Cut!.Value.PoundsPerUsGallon * 1.2), "blonde"),
        2 => new Used(Day, jar.Contents.Share(0.3), "viola top"),
        3 => new Tested(Day, true, 12),
        4 => new Moved(Day, "warm", jar.Dates with { TestFrom = jar.Dates.TestFrom.AddDays(-5), UseBy = jar.Dates.UseBy.AddDays(-9) }),
        5 => new Moved(Day, "cold"),
        _ => new Noted(Day, "a note"),
    };

    private static Thinned Thin(Jar jar, PoundCut to, string solvent)
    {
        var add = Thinning.Solve(jar.Contents.Cut!.Value, to, jar.Contents.Liquid).Require().Add;
        return new Thinned(Day, new SolventPart(solvent, add, Mass.FromGrams(add.Milliliters * 0.8)));
    }

    private static Thickened Thicken(Jar jar, PoundCut to, string grade)
    {
        var add = Thickening.Solve(jar.Contents.Cut!.Value, to, jar.Contents.Liquid).Require().Add;
        var fresh = new KeepingDates(Day.AddDays(2), new DateOnly(2026, 9, 9), new DateOnly(2027, 3, 9));
        return new Thickened(Day, new ResinPart(grade, add), jar.Dates.Shortest(fresh));
    }

    private static Mixed Mix(double cut, double pour, string grade, string solvent)
    {
        var poured = Volume.FromMilliliters(pour);
        return new Mixed(
            Day,
            new Contents([new(grade, PoundCut.FromPoundsPerUsGallon(cut).FlakesFor(poured))], [new(solvent, poured, Mass.FromGrams(pour * 0.8))]),
            new Container(ContainerMaterial.Glass),
            new KeepingDates(Day.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9)),
            "main",
            Temperature.FromDegreesCelsius(20));
    }

    /// <summary>A shop at which anything happens in any order. It counts what is put in by itself.</summary>
    private sealed class RandomBench
    {
        private readonly List<List<JarEvent>> lives = [];
        private readonly List<Contents> used = [];
        private readonly Dictionary<string, double> put = [];

        internal RandomBench(IEnumerable<Mixed> mixes)
        {
            foreach (var mixed in mixes)
            {
                lives.Add([mixed]);
                Count(mixed.Contents.Resins[0].Grade, mixed.Contents.Flakes.Grams);
                Count(mixed.Contents.Solvents[0].Solvent, mixed.Contents.Poured.Milliliters);
            }
        }

        internal double Put(string what) => put.GetValueOrDefault(what);

        internal double There(Func<Contents, double> sum) => Jars().Sum(j => sum(j.Contents)) + used.Sum(sum);

        internal void Do(int kind, int pick, int what, double part)
        {
            var standing = Jars().Where(j => j.OnShelf).ToArray();
            if (standing.Length == 0)
            {
                return;
            }

            var jar = standing[pick % standing.Length];
            var life = lives[jar.Number.Value - 1];
            switch (kind)
            {
                case 0 when jar.Contents.Cut is { PoundsPerUsGallon: > 0.1 } cut:
                    var thinned = Thin(jar, PoundCut.FromPoundsPerUsGallon(Math.Max(0.05, cut.PoundsPerUsGallon * Math.Min(part, 0.95))), Solvents[what]);
                    Count(Solvents[what], thinned.Added.Poured.Milliliters);
                    life.Add(thinned);
                    break;
                case 1 when jar.Contents.Cut is { PoundsPerUsGallon: < 5 } cut:
                    var thickened = Thicken(jar, PoundCut.FromPoundsPerUsGallon(cut.PoundsPerUsGallon * (1 + part)), Grades[what]);
                    Count(Grades[what], thickened.Added.Weight.Grams);
                    life.Add(thickened);
                    break;
                case 2:
                    used.Add(jar.Take(jar.Contents.Liquid * part, "").Require());
                    life.Add(new Used(Day, used[^1]));
                    break;
                case 3:
                    PourOn([(jar, part)]);
                    break;
                case 4 when standing.Length > 1:
                    PourOn([(jar, part), (standing[(pick + 1) % standing.Length], 1)]);
                    break;
                case 5 when JarLife.Of(jar.Number, life).Require() is { Standing: [Noted or Tested, ..] } noted:
                    life.Add(noted.Undo(Day).Require());
                    break;
                default:
                    life.Add(new Noted(Day, "a note"));
                    break;
            }
        }

        private void PourOn((Jar Jar, double Part)[] from)
        {
            var made = JarNumber.From(lives.Count + 1);
            var taken = from.Select(f => (f.Jar, Contents: f.Jar.Take(f.Jar.Contents.Liquid * f.Part, "").Require())).ToArray();
            var all = taken.Select(t => t.Contents).Aggregate((one, other) => one.With(other));
            foreach (var (jar, contents) in taken)
            {
                lives[jar.Number.Value - 1].Add(new PouredOut(Day, contents, made));
            }

            var first = from[0].Jar;
            lives.Add([new Blended(Day, all, first.Container, first.Dates, first.Shelf, Day, [.. from.Select(f => f.Jar.Number)])]);
        }

        private IEnumerable<Jar> Jars() => lives.Select((life, i) => Jar.Fold(JarNumber.From(i + 1), life).Require());

        private void Count(string what, double amount) => put[what] = put.GetValueOrDefault(what) + amount;
    }
}
