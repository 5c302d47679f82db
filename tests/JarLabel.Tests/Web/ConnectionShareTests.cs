using JarLabel.Web.Guards;

namespace JarLabel.Tests.Web;

/// <summary>Served to a network: a host that holds all the connections it can get leaves room for the others.</summary>
public sealed class ConnectionShareTests : IDisposable
{
    private readonly WebShop shop = new(IPAddress.Loopback, open: true);

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task Three_hundred_idle_connections_of_one_host_shut_out_nobody_else()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only Linux lets a program come from every address of the loopback network.");
        var stop = TestContext.Current.CancellationToken;
        var (idle, refused) = (new List<Stream>(), 0);
        try
        {
            for (var i = 0; i < 300; i++)
            {
                try
                {
                    idle.Add(await WebShop.Connect(IPAddress.Parse("127.0.0.2"), shop.Address.Port, stop));
                }
                catch (SocketException)
                {
                    refused++;
                }
            }

            Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
            Assert.InRange(refused + await Closed(idle, stop), 300 - 32, 300 - 1);
        }
        finally
        {
            idle.ForEach(one => one.Dispose());
        }

        shop.ComeFrom("127.0.0.2");
        for (var tries = 0; tries < 50; tries++)
        {
            try
            {
                Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
                return;
            }
            catch (HttpRequestException) when (tries < 49)
            {
                await Task.Delay(100, stop);
            }
        }
    }

    [Fact]
    public void What_is_given_back_once_can_be_taken_once()
    {
        var shares = new Shares(2, 3);
        var (one, other) = (IPAddress.Parse("10.0.0.1"), IPAddress.Parse("10.0.0.2"));
        var first = shares.Take(one);
        Assert.NotNull(first);
        Assert.NotNull(shares.Take(one));
        Assert.Null(shares.Take(one));
        Assert.NotNull(shares.Take(other));
        Assert.Null(shares.Take(other));
        first.Dispose();
        first.Dispose();
        Assert.NotNull(shares.Take(IPAddress.Parse("::ffff:10.0.0.1")));
        Assert.Null(shares.Take(one));
        Assert.Null(shares.Take(other));
    }

    /// <summary>How many the server has closed.</summary>
    private static async Task<int> Closed(List<Stream> connections, CancellationToken stop)
    {
        var ended = connections.ConvertAll(one => Ended(one, stop));
        await Task.Delay(1000, stop);
        return ended.Count(one => one.IsCompletedSuccessfully);
    }

    private static async Task Ended(Stream connection, CancellationToken stop)
    {
        try
        {
            Assert.Equal(0, await connection.ReadAsync(new byte[1], stop));
        }
        catch (IOException)
        {
            // Closed without a word.
        }
    }
}
