namespace JarLabel.Tests.Air;

public class FinishingSessionTests
{
    /// <summary>By hand: 40 square feet twice at 400 square feet a gallon are 0.2 gallon; 1.66 lb of a 2-lb gallon is resin, so 1/1.2 of it
    /// was alcohol: 0.1667 gallon, 631 mL.</summary>
    [Fact, Cites(References.FineWoodworking, "a gallon of 2-lb liquid holds 1.66 lb of shellac")]
    public void Two_coats_on_a_table_top_give_off_so_much_alcohol()
    {
        var spread = Area.FromSquareFeet(400) / Volume.FromUsGallons(1).Liters;
        var session = new FinishingSession(Area.FromSquareFeet(40), 2, spread, PoundCut.FromPoundsPerUsGallon(2));
        Assert.Equal(0.2, session.Liquid.UsGallons, 1e-9);
        Assert.Equal(631, session.Evaporated.Milliliters, 1.0);
    }
}
