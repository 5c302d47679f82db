namespace JarLabel.Acceptance;

/// <summary>How warm a jar stood, from its mixing on and in whatever jar, says until when it keeps. Garnet keeps 8 months at 20 °C; a shop that settled on a Q10 of 2
/// gives it 4 at 30 °C and, by the calendar, 12 at 10 °C.</summary>
public sealed class KeptDatesTests : IDisposable
{
    private static readonly string[] Batch = ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95"];

    private readonly Shop shop = new();

    public KeptDatesTests()
    {
        shop.Json("shop", "set", "aging", "2");
        shop.Json("shop", "set", "shelf", "attic=30 C");
        shop.Json("shop", "set", "shelf", "cellar=10 C");
    }

    public void Dispose() => shop.Dispose();

    /// <summary>A month of eight is an eighth: seven of them are left wherever it goes. A month at 10 °C is a sixteenth: fifteen are left, so that the cool stay gains.</summary>
    [Fact]
    public void A_cool_stay_gains_and_a_warm_one_costs_no_more_than_its_time()
    {
        Mix("2026-03-09T00:00", "--no-label");
        Mix("2026-03-09T00:00", "--no-label", "--shelf", "cellar");
        Assert.Equal("2027-03-09", Move("1", "cellar", "2026-04-09T00:00"));
        Assert.Equal("2026-11-09", Move("1", "main", "2026-04-09T00:00"));
        var warm = Move("1", "attic", "2026-04-09T00:00");
        Assert.Equal("2026-07-24", warm); // 7/8 of 4 months: 3 1/2
        Assert.Equal("2026-07-31", Move("2", "attic", "2026-04-09T00:00")); // 15/16 of 4 months: 3 3/4, 9 Jul and 22.8 days
        Assert.Equal("2026-11-07", Move("1", "main", "2026-04-10T00:00")); // a day there is two here: 1/30.4 of a month is gone, 7.967 are left, 9 Oct and 29.4 days
    }

    [Fact]
    public void A_shelf_that_becomes_warmer_dates_what_stands_there_anew_and_says_whose_labels()
    {
        Mix("2026-03-09T00:00");
        Mix("2026-03-09T00:00", "--no-label");
        Mix("2026-03-09T00:00", "--shelf", "cellar");
        var answer = shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09");
        var told = Assert.Single(answer["warnings"]!.AsArray())!;
        Assert.Equal("JL219", Text(told, "code"));
        Assert.Contains("The use-by of 2 jars moved with the warmth of shelf \"main\": jar 1-9 now ≈ 9 Sep 2026, jar 2-7 now ≈ 9 Sep 2026. The label of jar 1-9 is out of date: \"jarlabel label 1\"", Text(told, "message"), StringComparison.Ordinal);
        var jar = shop.Json("jar", "1", "--at", "2026-07-10");
        Assert.Equal("2026-09-09", Text(jar["jar"]!, "useBy")); // half was spent in 4 months, and the other half takes 2
        Assert.Contains("JL186", Codes(jar));
        Assert.Contains("dated anew by how warm shelf main is or was", shop.Run("jar", "1").Result, StringComparison.Ordinal);
        Assert.Equal([(1, true), (2, null), (3, null)], shop.Json("shelf", "--at", "2026-07-10")["jars"]!.AsArray().Select(j => (j!["number"]!.GetValue<int>(), j["labelOutOfDate"]?.GetValue<bool>())));
        Assert.Contains("9 Sep 2026, label out of date", shop.Run("shelf", "--at", "2026-07-10").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("JL186", Codes(shop.Json("label", "1", "--at", "2026-07-10")));
        Assert.DoesNotContain("JL186", Codes(shop.Json("jar", "1", "--at", "2026-07-10")));
        Assert.Empty(shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09")["warnings"]!.AsArray());
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>At 30 °C a Q10 of 2 leaves 4 of 8 months, one of 3 leaves 2 2/3: 9 May and 20.3 days.</summary>
    [Fact]
    public void What_the_shop_settles_of_ageing_dates_its_jars_anew()
    {
        Mix("2026-03-09T00:00", "--shelf", "attic");
        Mix("2026-03-09T00:00", "--no-label");
        Assert.Equal("2026-07-09", UseBy("1"));
        var answer = shop.Json("shop", "set", "aging", "3", "--at", "2026-03-10");
        Assert.Contains("The use-by of 1 jar moved with this setting: jar 1-9 now ≈ 29 May 2026. The label of jar 1-9 is out of date", Text(Assert.Single(answer["warnings"]!.AsArray())!, "message"), StringComparison.Ordinal);
        Assert.Equal(("2026-05-29", "2026-11-09"), (UseBy("1"), UseBy("2")));
        Assert.Contains("the shop settled anew how jars keep: use-by about 29 May 2026", shop.Run("jar", "1").Result, StringComparison.Ordinal);
        Assert.Equal(["JL219"], Codes(shop.Json("shop", "set", "aging", "2", "--at", "2026-03-11")));
        Assert.Equal(("2026-07-09", "2026-11-09"), (UseBy("1"), UseBy("2")));
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>More of the jars are to dry hard still: each is used sooner, by the date that a batch of the same day gets.</summary>
    [Fact]
    public void What_share_is_to_dry_hard_still_dates_its_jars_anew()
    {
        Mix("2026-03-09T00:00", "--no-label");
        Assert.Equal(["JL219"], Codes(shop.Json("shop", "set", "still-good", "97", "--at", "2026-03-10")));
        Mix("2026-03-09T00:00", "--no-label");
        Assert.Equal(UseBy("2"), UseBy("1"));
        Assert.True(string.CompareOrdinal(UseBy("1"), "2026-09-09") < 0);
        Assert.Equal(["JL219"], Codes(shop.Json("shop", "set", "still-good", "none", "--at", "2026-03-11")));
        Assert.Equal(("2026-11-09", "2026-11-09"), (UseBy("1"), UseBy("2")));
        shop.Json("test", "1", "pass", "--at", "2026-09-09");
        Assert.Equal(["JL219"], Codes(shop.Json("shop", "set", "keeping-spread", "3", "--at", "2026-09-10")));
        Assert.DoesNotContain("JL124", Codes(shop.Json("jar", "1", "--at", "2026-09-10")));
    }

    [Fact]
    public void What_was_put_right_the_same_day_or_tried_dry_moves_nothing()
    {
        Mix("2026-03-09T00:00", "--no-label");
        Assert.Equal(["JL219"], Codes(shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09", "--dry-run")));
        Assert.Equal("2026-11-09", UseBy("1"));
        Assert.Contains("main (20", shop.Run("shop", "show").Result, StringComparison.Ordinal);
        shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09");
        shop.Json("shop", "set", "shelf", "main=20 C", "--at", "2026-07-09");
        Assert.Equal("2026-11-09", UseBy("1"));
    }

    /// <summary>What was said of a later day stands, whatever is entered late of one before.</summary>
    [Fact]
    public void A_warmth_that_is_entered_late_lasts_until_the_next_that_was_said()
    {
        shop.Json("shop", "set", "shelf", "loft=15 C", "--at", "2026-01-01");
        Mix("2026-02-05T00:00", "--no-label", "--shelf", "loft");
        shop.Json("shop", "set", "shelf", "loft=30 C", "--at", "2026-03-05");
        var hot = UseBy("1");
        var late = shop.Json("shop", "set", "shelf", "loft=20 C", "--at", "2026-02-20");
        Assert.Contains("JL238", Codes(late));
        Assert.Contains("loft (30 deg C)", shop.Run("shop", "show").Result, StringComparison.Ordinal);
        Assert.True(string.CompareOrdinal(UseBy("1"), hot) < 0); // two weeks a little warmer
        shop.Json("shop", "set", "shelf", "loft=15 C", "--at", "2026-02-20");
        Assert.Equal(hot, UseBy("1"));
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>The day was said later: the jar has left the shelf meanwhile and stood in the warm for a month all the same.</summary>
    [Fact]
    public void A_warmth_of_an_earlier_day_counts_for_a_jar_that_has_left_the_shelf()
    {
        Mix("2026-03-09T00:00", "--no-label");
        Move("1", "cellar", "2026-05-09T00:00");
        Move("1", "main", "2026-06-09T00:00");
        Move("1", "attic", "2026-06-09T00:00");
        var before = UseBy("1");
        shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-04-09");
        Assert.True(string.CompareOrdinal(UseBy("1"), before) < 0, UseBy("1"));
    }

    [Fact]
    public void Taking_back_a_step_leaves_the_dates_of_the_warmer_shelf()
    {
        Mix("2026-03-09T00:00", "--no-label");
        shop.Json("use", "1", "100 mL", "--at", "2026-05-09");
        shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09");
        var undone = shop.Json("undo", "1", "--at", "2026-07-10", "--no-label")["jar"]!;
        Assert.InRange(undone["volumeMilliliters"]!.GetValue<double>(), 402, 403);
        Assert.Equal("2026-09-09", Text(undone, "useBy"));
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>Half of the life is spent in four months; two are left at 30 °C, whichever jar it goes into.</summary>
    [Fact]
    public void What_is_poured_off_or_together_goes_on_ageing_where_it_came_from()
    {
        Mix("2026-03-09T00:00", "--no-label");
        Mix("2026-03-09T00:00", "--no-label");
        var poured = shop.Json("decant", "1", "--into", "100 mL", "--shelf", "cellar", "--at", "2026-07-09T00:00", "--no-label")["made"]![0]!["jar"]!;
        Assert.Equal("2027-03-09", Text(poured, "useBy"));
        Assert.Equal("2026-09-09", Move("3", "attic", "2026-07-09T00:00"));
        Assert.Equal("2026-11-09", Move("3", "main", "2026-07-09T00:00"));
        var blend = shop.Json("blend", "1", "2", "--shelf", "attic", "--at", "2026-07-09T00:00", "--no-label")["jar"]!;
        Assert.Equal("2026-09-09", Text(blend, "useBy"));
        Assert.Equal("2026-11-09", Move("4", "main", "2026-07-09T00:00"));
        Assert.Equal("2026-11-09", Text(shop.Json("thin", "4", "--to", "1", "--at", "2026-07-10", "--no-label")["jar"]!, "useBy"));
    }

    [Fact]
    public void A_batch_of_an_earlier_day_counts_the_shelf_as_it_was_then()
    {
        shop.Json("shop", "set", "shelf", "main=30 C", "--at", "2026-07-09");
        Assert.Equal("2026-09-09", Text(Mix("2026-03-09T00:00", "--no-label")["jar"]!, "useBy"));
        Assert.Equal("2026-11-10", Text(Mix("2026-07-10T00:00", "--no-label")["jar"]!, "useBy"));
    }

    [Fact]
    public void A_jar_that_stands_there_already_is_told_so_and_nothing_is_recorded()
    {
        Mix("2026-03-09T00:00", "--no-label");
        var answer = shop.Json("move", "1", "--shelf", "main", "--at", "2026-03-10");
        Assert.Equal(["JL218"], Codes(answer));
        Assert.Null(answer["step"]);
        Assert.Single(shop.Json("jar", "1")["history"]!.AsArray());
        Assert.False(Directory.Exists(shop.Labels) && Directory.GetFiles(shop.Labels).Length > 0);
    }

    /// <summary>Nobody knows any more how warm it was there, so the use-by stays as careful as it was.</summary>
    [Fact]
    public void A_shelf_that_is_forgotten_makes_nothing_younger()
    {
        Mix("2026-03-09T00:00", "--no-label", "--shelf", "attic");
        var left = Move("1", "main", "2026-05-09T00:00");
        var run = shop.Run("shop", "set", "shelf", "attic=none", "--json");
        Assert.Contains("JL428", run.Result, StringComparison.Ordinal);
        Assert.True(string.CompareOrdinal(Move("1", "cellar", "2026-05-10T00:00"), left) <= 0, left);
    }

    [Theory]
    [InlineData("America/New_York", "20260309T140000Z")]
    [InlineData("Asia/Kolkata", "20260309T043000Z")]
    public void A_calendar_is_stamped_with_the_moment_in_utc(string zone, string stamp)
    {
        Mix("2026-03-09T10:00", "--no-label");
        var file = Path.Combine(shop.Folder, "shelf.ics");
        using var process = shop.StartUnder("env", $"TZ={zone}", Place.Program, "shelf", "--ics", file, "--at", "2026-03-09T10:00");
        process.WaitForExit();
        var text = File.ReadAllText(file);
        Assert.Contains($"DTSTAMP:{stamp}\r\n", text, StringComparison.Ordinal);
        Assert.Contains("DTSTART:20260310T100000\r\n", text, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Codes(JsonNode answer) => answer["warnings"]!.AsArray().Select(w => Text(w!, "code"));

    private static string Text(JsonNode node, string key) => node[key]!.GetValue<string>();

    private JsonObject Mix(string at, params string[] more) => shop.Json([.. Batch, "--at", at, .. more]);

    private string Move(string jar, string shelf, string at) => Text(shop.Json("move", jar, "--shelf", shelf, "--at", at, "--no-label")["jar"]!, "useBy");

    private string UseBy(string jar) => Text(shop.Json("jar", jar, "--at", "2026-07-10")["jar"]!, "useBy");
}
