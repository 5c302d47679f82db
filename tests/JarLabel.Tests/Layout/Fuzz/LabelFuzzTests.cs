namespace JarLabel.Tests.Layout.Fuzz;

/// <summary>2,000 cases of random designs and random jars, the same in every run: either a label on which nothing overlaps and nothing leaves its place,
/// or a problem that is named. The looking is done here anew, not by the preflight.</summary>
public class LabelFuzzTests
{
    private const int Seed = 20260309;
    private const int Cases = 2000;
    private const double MillimetresPerPoint = 25.4 / 72;

    [Fact]
    public void Any_jar_in_any_design_is_a_sound_label_or_a_named_problem()
    {
        var (whole, named) = (0, new SortedDictionary<string, int>(StringComparer.Ordinal));
        Parallel.For(0, Cases, () => new SkiaRuler(), (number, _, ruler) =>
        {
            foreach (var problem in Try(number, ruler))
            {
                lock (named)
                    named[problem] = named.GetValueOrDefault(problem) + 1;
                return ruler;
            }

            Interlocked.Increment(ref whole);
            return ruler;
        }, _ => { });
        TestContext.Current.SendDiagnosticMessage($"seed {Seed}: {whole} labels, {string.Join(", ", named.Select(pair => $"{pair.Key} {pair.Value}"))}");
        Assert.Equal(Cases, whole + named.Values.Sum());
        Assert.InRange(whole, Cases / 5, Cases - 100); // both ends happen often, or the cases say nothing
        Assert.All(named.Keys, code => Assert.StartsWith("JL3", code, StringComparison.Ordinal));
    }

    /// <summary>The codes of what was named; nothing for a sound label.</summary>
    private static IEnumerable<string> Try(int number, SkiaRuler ruler)
    {
        var random = new Random(Seed + number);
        var text = new RandomJars(random).Next();
        var (design, area) = Meeting(number, random);
        var result = Composer.Place(text, design, area, ruler).Then<PlacedLabel>(label =>
            new Preflight(ruler, QrCheck.Read).Check(label, area.X + area.Width + 5, area.Y + area.Height + 5) is { Count: > 0 } problems ? Result<PlacedLabel>.Failed(problems) : label);
        if (result.TryGet(out var sound, out var named))
            Look(number, sound, text, ruler);
        Assert.All(named, problem => Assert.False(string.IsNullOrWhiteSpace(problem.Message) || string.IsNullOrWhiteSpace(problem.Where), Case(number)));
        return named.Select(problem => problem.Code);
    }

    private static (Design Design, LabelArea Area) Meeting(int number, Random random)
    {
        if (number % 2 == 0)
        {
            var own = new RandomDesigns(random).Next();
            return (own, new LabelArea(own.Shape, 3, 4, own.Width, own.Height, 300));
        }

        var ids = LayoutFiles.Ours.DesignIds.Where(id => id is not ("notice" or "bag" or "bottle")).ToList();
        var design = LayoutFiles.Design(ids[random.Next(ids.Count)]);
        var larger = design.Shape == LabelShape.Round ? 0 : random.Next(3) * 7;
        return (design, new LabelArea(design.Shape, 3, 4, design.Width + larger, design.Height + larger, random.Next(2) == 0 ? 203 : 300));
    }

    private static void Look(int number, PlacedLabel label, LabelText text, SkiaRuler ruler)
    {
        var rooms = label.Marks.OfType<TextMark>().Where(mark => mark.Ink != Ink.White).Select(mark => (Mark: mark, Room: Room(mark, ruler))).ToList();
        foreach (var (mark, room) in rooms)
        {
            Assert.True(Inside(room, label), $"{Case(number)}: \"{mark.Text}\" leaves the label");
            Assert.True(mark.Points >= label.Design.Voices.Min(voice => voice.Sizes[^1]) * 0.5, $"{Case(number)}: \"{mark.Text}\" in {mark.Points} pt");
        }

        for (var one = 0; one < rooms.Count; one++)
        {
            for (var other = one + 1; other < rooms.Count; other++)
                Assert.False(Over(rooms[one].Room, rooms[other].Room) > 0.16, $"{Case(number)}: \"{rooms[one].Mark.Text}\" over \"{rooms[other].Mark.Text}\"");
        }

        Assert.All(label.Marks.OfType<QrMark>(), code => Assert.Equal(text.Code, QrCheck.Read(code.Modules)));
    }

    private static (double Left, double Top, double Right, double Bottom) Room(TextMark mark, SkiaRuler ruler) => (
        mark.X,
        mark.Baseline - (ruler.Measures(mark.Face).XHeight * mark.Points * MillimetresPerPoint),
        mark.X + ruler.Width(mark.Text, mark.Face, mark.Points),
        mark.Baseline);

    private static bool Inside((double Left, double Top, double Right, double Bottom) room, PlacedLabel label)
    {
        var (area, inset) = (label.Area, label.Design.Inset - 0.02);
        if (area.Shape != LabelShape.Round)
            return room.Left >= area.X + inset && room.Top >= area.Y + inset && room.Right <= area.X + area.Width - inset && room.Bottom <= area.Y + area.Height - inset;
        var (x, y) = (area.X + (area.Width / 2), area.Y + (area.Height / 2));
        return ((double, double)[])[(room.Left, room.Top), (room.Right, room.Top), (room.Left, room.Bottom), (room.Right, room.Bottom)] is var corners
            && corners.All(corner => Math.Sqrt(Math.Pow(corner.Item1 - x, 2) + Math.Pow(corner.Item2 - y, 2)) <= (area.Width / 2) - inset);
    }

    private static double Over((double Left, double Top, double Right, double Bottom) one, (double Left, double Top, double Right, double Bottom) other) =>
        Math.Min(Math.Min(one.Right, other.Right) - Math.Max(one.Left, other.Left), Math.Min(one.Bottom, other.Bottom) - Math.Max(one.Top, other.Top));

    private static string Case(int number) => string.Create(CultureInfo.InvariantCulture, $"case {number}, seed {Seed}");
}
