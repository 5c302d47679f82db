namespace JarLabel.Tests.Web;

/// <summary>Served to a network and opened: everybody reads, only paired devices record.</summary>
public sealed class OpenReadingTests : IDisposable
{
    private readonly WebShop shop = new(IPAddress.Loopback, open: true);

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_stranger_reads_and_is_led_to_the_pairing_page_for_a_form()
    {
        Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
        Assert.Equal("/pair?to=/J/1-9/thin", (await shop.Get("/J/1-9/thin")).Location);
    }

    [Fact]
    public async Task Who_guesses_numbers_that_are_not_there_is_soon_sent_away()
    {
        var statuses = new List<int>();
        for (var number = 100; number < 150; number++)
        {
            statuses.Add((await shop.Get($"/J/{number}")).Status);
        }

        Assert.Equal(30, statuses.Count(status => status == 404));
        Assert.Equal(20, statuses.Count(status => status == 429));

        // What is there is shown to everybody all the while, to the one who guesses too.
        Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
        Assert.Equal(429, (await shop.Get("/J/150")).Status);
    }
}
