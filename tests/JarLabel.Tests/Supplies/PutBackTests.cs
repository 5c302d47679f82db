using JarLabel.Core.Supplies;

namespace JarLabel.Tests.Supplies;

/// <summary>How much a bag or bottle holds when a step that took from it is taken back, and when the last thing said of it is.</summary>
public class PutBackTests
{
    private static readonly DateTime Day = new(2026, 3, 9, 10, 0, 0);
    private static readonly SupplyNumber Number = SupplyNumber.From(12);

    /// <summary>Events as a word each: <c>-100@1</c> taken for jar 1, <c>=400</c> measured, <c>+1</c> put back from jar 1, <c>u</c> undone, <c>x</c> discarded.
    /// What a step took that never happened is here again, unless it was measured since.</summary>
    [Theory]
    [InlineData("-100@1 +1", 500)]
    [InlineData("-100@1 =500 +1", 500)]                  // never taken: the bag was full all the time
    [InlineData("-100@1 =398 +1", 398)]                  // weighed after it: that stands, whatever was entered wrongly before
    [InlineData("-200@1 -100@2 =300 +2", 300)]           // jar 2 never took: 300 g were there before it, and still are
    [InlineData("-200@1 -100@2 =198 +2", 198)]
    [InlineData("-100@1 =400 =390 +1", 390)]
    [InlineData("-100@1 =398 =500 +1", 500)]
    [InlineData("-100@1 =398 -50@2 +1", 348)]
    [InlineData("-100@1 =500 -50@2 +1", 450)]
    [InlineData("-100@1 -50@2 =450 +1 +2", 450)]
    [InlineData("-100@1 -100@2 +1 +2", 500)]
    [InlineData("-100@1 =0 +1", 0)]
    [InlineData("=20 u", 500)]
    [InlineData("-100@1 =20 u", 400)]
    [InlineData("-100@1 =20 u +1", 500)]
    [InlineData("-100@1 =398 +1 u", 500)]
    [InlineData("x u -100@1", 400)]
    [InlineData("x =0", 0)]
    [InlineData("u", 0)]
    public void What_is_put_back_never_makes_it_more_than_there_was(string life, double left)
    {
        Assert.Equal(left, Bag.Fold(Number, Life(new BagAdded(Day, "garnet", Mass.FromGrams(500), new(2026, 1, 5)), life)).Require().Rest, 1e-9);
        Assert.Equal(left, Bottle.Fold(Number, Life(new BottleAdded(Day, "ethanol-95", Volume.FromMilliliters(500), new(2026, 1, 5), "main"), life)).Require().Rest, 1e-9);
    }

    /// <summary>A step that is entered late, of a day before the measuring, was in it already; one of the same day is taken off.</summary>
    [Theory]
    [InlineData(-1, 120, 200)]
    [InlineData(-1, 480, 200)] // it was all there on that day
    [InlineData(0, 120, 80)]
    [InlineData(1, 120, 80)]
    public void What_is_entered_late_changes_nothing_of_what_was_measured_since(int day, double amount, double left)
    {
        List<SupplyEvent> events = [new BagAdded(Day.AddDays(-9), "garnet", Mass.FromGrams(500), new(2026, 1, 5)), new FlakesLeft(Day, Mass.FromGrams(200))];
        events.Add(Bag.Fold(Number, events).Require().Take(Day.AddDays(day), amount, JarNumber.From(1))!);
        var bag = Bag.Fold(Number, events).Require();
        Assert.Equal((left, day < 0), (bag.Rest, bag.IsMeasuredSince(Day.AddDays(day))));
        Assert.Equal(200, Bag.Fold(Number, [.. events, new PutBack(Day.AddDays(2), JarNumber.From(1))]).Require().Rest, 1e-9);
    }

    [Fact]
    public void No_more_is_entered_late_than_there_was()
    {
        List<SupplyEvent> events = [new BagAdded(Day.AddDays(-9), "garnet", Mass.FromGrams(500), new(2026, 1, 5)), new FlakesTaken(Day.AddDays(-5), Mass.FromGrams(450), JarNumber.From(1)), new FlakesLeft(Day, Mass.FromGrams(40))];
        var bag = Bag.Fold(Number, events).Require();
        Assert.Null(bag.Take(Day.AddDays(-1), 60, JarNumber.From(2)));
        Assert.Null(bag.Take(Day, 60, JarNumber.From(2)));
        Assert.NotNull(bag.Take(Day.AddDays(-1), 50, JarNumber.From(2)));
    }

    /// <summary>Ledgers of before put the 100 mL back on top of the measurement, and took from that.</summary>
    [Fact]
    public void A_ledger_that_took_from_what_is_no_longer_put_back_is_read()
    {
        var added = new BagAdded(Day, "garnet", Mass.FromGrams(500), new(2026, 1, 5));
        Assert.Equal(0, Bag.Fold(Number, Life(added, "-100@1 =100 +1 -180@2")).Require().Rest);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, Life(added, "-100@1 =100 -180@2")).Problems).Code);
    }

    /// <summary>Whatever is taken, measured, put back and undone: never less than nothing, never more than was bought.</summary>
    [Fact]
    public void It_holds_from_nothing_to_what_was_bought() => Gen.Select(Gen.Int[0, 3], Gen.Int[1, 3], Gen.Double[0, 500]).Array[0, 25].Sample(steps =>
    {
        List<SupplyEvent> events = [new BagAdded(Day, "garnet", Mass.FromGrams(500), new(2026, 1, 5))];
        foreach (var (what, jar, amount) in steps)
        {
            var bag = Bag.Fold(Number, events).Require();
            SupplyEvent? next = what switch
            {
                0 => bag.TakenBack ? null : new FlakesLeft(Day, Mass.FromGrams(amount)),
                1 => bag.OnHand ? bag.Take(Day, amount / 4, JarNumber.From(jar)) : null,
                2 => bag.Taken.Any(t => t.Jar.Value == jar) ? new PutBack(Day, JarNumber.From(jar)) : null,
                _ => bag.Undo(Day).TryGet(out var undone, out _) ? undone : null,
            };
            events.AddRange(next is null ? [] : [next]);
            Assert.InRange(Bag.Fold(Number, events).Require().Rest, 0, 500);
        }
    });

    [Fact]
    public void What_a_jar_took_and_what_is_taken_back_already_cannot_be_undone_here()
    {
        var added = new BagAdded(Day, "garnet", Mass.FromGrams(500), new(2026, 1, 5));
        var taken = Assert.Single(Bag.Fold(Number, Life(added, "-100@7")).Require().Undo(Day).Problems);
        Assert.Equal("JL226", taken.Code);
        Assert.Contains($"jar {JarNumber.From(7)}", taken.Message, StringComparison.Ordinal);
        Assert.Equal("JL227", Assert.Single(Bag.Fold(Number, Life(added, "u")).Require().Undo(Day).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, Life(added, "u =20")).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, [added, new SupplyUndone(Day, "FlakesLeft")]).Problems).Code);
    }

    [Fact]
    public void A_pinch_and_a_move_are_taken_back_too()
    {
        var added = new BagAdded(Day, "garnet", Mass.FromGrams(500), new(2026, 1, 5));
        FlakesTested cloudy = new(Day, Pinch.Cloudy), gel = new(Day, Pinch.Gel);
        var bag = Bag.Fold(Number, [added, cloudy, gel, new SupplyUndone(Day, nameof(FlakesTested))]).Require();
        Assert.Equal((Pinch.Cloudy, Pinch.Cloudy), (bag.Test!.Pinch, bag.Worst!.Value));
        var bottled = new BottleAdded(Day, "ethanol-95", Volume.FromMilliliters(500), new(2026, 1, 5), "main");
        Assert.Equal("main", Bottle.Fold(Number, [bottled, new BottleMoved(Day, "cellar"), new SupplyUndone(Day, nameof(BottleMoved))]).Require().Shelf);
    }

    private static List<SupplyEvent> Life(SupplyEvent added, string words)
    {
        var flakes = added is BagAdded;
        List<SupplyEvent> events = [added], standing = [added];
        foreach (var word in words.Split(' '))
        {
            var (amount, jar) = (word.TrimStart('-', '=', '+', 'u', 'x').Split('@') is [var first, ..] && double.TryParse(first, out var size) ? size : 0, word.Split('@')[^1]);
            SupplyEvent next = word[0] switch
            {
                '-' => flakes ? new FlakesTaken(Day, Mass.FromGrams(amount), JarNumber.From(int.Parse(jar))) : new SolventTaken(Day, Volume.FromMilliliters(amount), JarNumber.From(int.Parse(jar))),
                '=' => flakes ? new FlakesLeft(Day, Mass.FromGrams(amount)) : new SolventLeft(Day, Volume.FromMilliliters(amount)),
                '+' => new PutBack(Day, JarNumber.From((int)amount)),
                'x' => new SupplyDiscarded(Day),
                _ => new SupplyUndone(Day, standing[^1].Name),
            };
            events.Add(next);
            if (next is SupplyUndone)
            {
                standing.RemoveAt(standing.Count - 1);
            }
            else if (next is PutBack back)
            {
                standing.RemoveAt(standing.FindLastIndex(e => e is FlakesTaken t && t.For == back.From || e is SolventTaken s && s.For == back.From));
            }
            else
            {
                standing.Add(next);
            }
        }

        return events;
    }
}
