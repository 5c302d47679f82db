namespace JarLabel.Acceptance;

public sealed class AirTests : IDisposable
{
    private static readonly string[] Job = ["calc", "air", "--solvent", "ethanol-95", "--room", "50 m3", "--over", "1 h", "--changes", "2"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>By hand: 40 square feet twice at 400 square feet a gallon are 757 mL of liquid; of a 2-lb cut 1/1.2 was alcohol: 631 mL.</summary>
    [Fact]
    public void A_job_said_as_cut_coats_and_area_evaporates_its_alcohol() =>
        Assert.Equal(631.6, shop.Json([.. Job, "--cut", "2", "--coats", "2", "--area", "40 sq ft"])["evaporatedMilliliters"]!.GetValue<double>(), 0.1);

    [Theory]
    [InlineData("air.pdf", "%PDF-")]
    [InlineData("air.svg", "<svg")]
    [InlineData("air.png", "PNG")]
    public void The_chart_is_written_as_its_ending_says(string name, string holds)
    {
        var file = Path.Combine(shop.Folder, name);
        Assert.Equal(file, shop.Json([.. Job, "--evaporate", "250 mL", "--out", file])["chart"]!.GetValue<string>());
        Assert.Contains(holds, System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(file))[..400], StringComparison.Ordinal);
    }

    /// <summary>A gallon of alcohol in 30 m³: 1.48 m³ of vapour, 4.9 % where 3.3 % burn.</summary>
    [Fact]
    public void Air_that_can_burn_is_told_on_screen_and_to_programs()
    {
        string[] spill = ["calc", "air", "--solvent", "ethanol-95", "--evaporate", "1 gal", "--room", "30 m3"];
        var run = shop.Run(spill);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("caution: THE AIR CAN BURN: 149.7 %", run.Result, StringComparison.Ordinal);
        Assert.DoesNotContain("long before fire", run.Result, StringComparison.Ordinal);
        Assert.Equal(["JL160", "JL237"], shop.Json(spill)["warnings"]!.AsArray().Select(told => told!["code"]!.GetValue<string>()));
        var mild = shop.Json("calc", "air", "--solvent", "ethanol-95", "--evaporate", "100 mL", "--room", "50 m3");
        Assert.Empty(mild["warnings"]!.AsArray());
        Assert.Equal((3.3, 19), (Math.Round(mild["lowerExplosivePercent"]!.GetValue<double>(), 9), Math.Round(mild["upperExplosivePercent"]!.GetValue<double>(), 9))); // NIOSH, ethyl alcohol
        Assert.Contains("3.3 to 19 % of vapour in the air", run.Result, StringComparison.Ordinal);
    }

    /// <summary>By hand: half a litre of methanol in 20 m³ is 14 854 ppm, 74 times its 200.</summary>
    [Fact]
    public void Air_far_over_the_exposure_limit_is_a_caution_with_first_aid()
    {
        var run = shop.Run("calc", "air", "--solvent", "methanol", "--evaporate", "500 mL", "--room", "20 m3");
        Assert.All(
            ["caution: TOO MUCH TO BREATHE: 74 times the exposure limit of 200 ppm", "out of doors", "section 8 of the safety data sheet", "POISON. Vapor harmful", "signs of methanol may come 10 to 48 h late"],
            said => Assert.Contains(said, run.Result, StringComparison.Ordinal));
        var json = shop.Json("calc", "air", "--solvent", "methanol", "--evaporate", "500 mL", "--room", "20 m3");
        Assert.Contains("POISON", json["poisonWording"]!.ToJsonString(), StringComparison.Ordinal);
        Assert.Contains("signs of methanol", json["firstAid"]!.ToJsonString(), StringComparison.Ordinal);
        var harmless = shop.Json("calc", "air", "--solvent", "isopropanol-99", "--evaporate", "500 mL", "--room", "20 m3");
        Assert.Equal((false, false), (harmless.ContainsKey("poisonWording"), harmless.ContainsKey("firstAid")));
        Assert.DoesNotContain("POISON", shop.Run("calc", "air", "--solvent", "isopropanol-99", "--evaporate", "500 mL", "--room", "20 m3").Result, StringComparison.Ordinal);
    }

    /// <summary>The same liquid in the same room and time asks for the same fresh air, whoever is asked.</summary>
    [Fact]
    public void The_answer_the_plan_and_the_notice_ask_for_the_same_fresh_air()
    {
        var planned = shop.Json("plan", "--for", "pad", "--area", "14 sq ft", "--coats", "1", "--grade", "garnet", "--solvent", "ethanol-95", "--room", "50 m3", "--over", "1 h")["air"]!;
        var evaporates = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{planned["evaporatedMilliliters"]!.GetValue<double>():0.#######} mL");
        var asked = shop.Json("calc", "air", "--solvent", "ethanol-95", "--room", "50 m3", "--over", "1 h", "--evaporate", evaporates);
        foreach (var figure in (string[])["airCubicMetersPerHourForLimit", "airCubicMetersPerHourForQuarterLel", "mixingFactor"])
        {
            Assert.Equal(planned[figure]!.GetValue<double>(), asked["careful"]![figure]!.GetValue<double>(), 0.001);
        }

        Assert.Equal((1, 3), (asked["mixingFactor"]!.GetValue<double>(), asked["careful"]!["mixingFactor"]!.GetValue<double>()));
        Assert.Equal(asked["careful"]!["airCubicMetersPerHourForLimit"]!.GetValue<double>(), 3 * asked["airCubicMetersPerHourForLimit"]!.GetValue<double>(), 0.001);
        Assert.Contains("mixing factor 3, of 1 where air mixes perfectly", shop.Run([.. Job, "--evaporate", "250 mL"]).Result, StringComparison.Ordinal);
        Assert.Contains("mixing factor 1, of 1", shop.Run([.. Job, "--evaporate", "250 mL", "--mixing", "1"]).Result, StringComparison.Ordinal);
    }

    /// <summary>Six changes an hour clear to a hundredth in 46 minutes where air mixes perfectly (CDC), in three times that in a shop.</summary>
    [Fact]
    public void Airing_a_room_tells_both_perfect_mixing_and_that_of_a_shop()
    {
        var told = shop.Run("calc", "purge", "--changes", "6", "--to", "0.01").Result;
        Assert.Contains("46.1 min leave 1 % at 6 air changes an hour", told, StringComparison.Ordinal);
        Assert.Contains("138.2 min leave 1 %, mixing factor 3", told, StringComparison.Ordinal);
        Assert.Equal(138.2, shop.Json("calc", "purge", "--changes", "6", "--to", "0.01", "--mixing", "3")["minutes"]!.GetValue<double>(), 0.1);
        Assert.DoesNotContain("in a shop", shop.Run("calc", "purge", "--changes", "6", "--to", "0.01", "--mixing", "2").Result, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("JL332", "--evaporate|250 mL|--out|air.doc")]
    [InlineData("JL339", "--evaporate|250 mL|--out|/no/such/folder/air.svg")]
    [InlineData("JL168", "--evaporate|250 mL|--cut|2|--coats|1|--area|1 m2")]
    [InlineData("JL168", "--over|2 h")]
    [InlineData("--coats", "--cut|2|--area|1 m2")]
    [InlineData("--area", "--cut|2|--coats|2|--area|ten")]
    [InlineData("--coats", "--cut|2|--coats|0|--area|1 m2")]
    public void A_question_that_cannot_be_answered_is_told(string says, string typed)
    {
        var run = shop.Run([.. Job.Take(6), .. typed.Split('|')]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }
}
