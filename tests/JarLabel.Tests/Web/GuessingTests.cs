using JarLabel.Web.Guards;

namespace JarLabel.Tests.Web;

/// <summary>Guessing the pairing code, from one host and from very many, and what that leaves to everybody else.</summary>
public sealed class GuessingTests : IDisposable
{
    private const int TriesOfOne = 5, TriesAMinute = 600;

    private static readonly DateTime Now = new(2026, 3, 9, 10, 0, 0);

    private readonly ScratchFolder folder = new();
    private readonly Clock clock = new();
    private readonly List<string> said = [];
    private readonly Pairing pairing;

    public GuessingTests() => pairing = new(Devices.Open(ShopFolder.At(folder["shop"]).Require()).Require(), said.Add, clock);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_host_has_five_wrong_tries_in_ten_minutes_and_then_not_even_the_right_code_is_taken_from_it()
    {
        Assert.All(Enumerable.Range(0, TriesOfOne), _ => Assert.Equal("JL606", Wrong(Host(1))));
        Assert.Equal("JL607", Try(pairing.Code, Host(1)));
        clock.Pass(TimeSpan.FromMinutes(9));
        Assert.Equal("JL607", Try(pairing.Code, Host(1)));
        clock.Pass(TimeSpan.FromMinutes(2));
        Assert.Null(Try(pairing.Code, Host(1)));
    }

    [Fact]
    public void All_addresses_of_one_ipv6_network_are_one_host()
    {
        Assert.All(Enumerable.Range(1, TriesOfOne), i => Assert.Equal("JL606", Wrong(IPAddress.Parse($"2001:db8::{i}"))));
        Assert.Equal("JL607", Try(pairing.Code, IPAddress.Parse("2001:db8::77")));
        Assert.Null(Try(pairing.Code, IPAddress.Parse("2001:db8:0:1::1")));
    }

    /// <summary>A code of eight digits is guessed at twenty times at most, one of twelve after that.</summary>
    [Fact]
    public void Against_many_hosts_the_code_grows_and_stays_the_same_from_then_on()
    {
        var codes = new List<string> { pairing.Code };
        for (var i = 0; i < 500; i++)
        {
            Assert.Equal("JL606", Wrong(Host(i / TriesOfOne)));
            codes.Add(pairing.Code);
        }

        Assert.Equal(4, codes.Take(20).Distinct().Count());
        Assert.All(codes.Take(20), code => Assert.Matches("^[0-9]{4} [0-9]{4}$", code));
        Assert.Matches("^[0-9]{4} [0-9]{4} [0-9]{4}$", Assert.Single(codes.Skip(20).Distinct()));
        Assert.Contains(pairing.Code, said[^1], StringComparison.Ordinal);
        Assert.Null(Try(pairing.Code, Host(9999)));
        Assert.Matches("^[0-9]{4} [0-9]{4} [0-9]{4}$", pairing.Code);
    }

    /// <summary>By hand: 600 tries a minute are 315,576,000 in a year, of a million million codes: one in 3169.</summary>
    [Fact]
    public void Very_many_hosts_together_slow_pairing_down_and_do_not_end_it()
    {
        for (var i = 0; i < TriesAMinute; i++)
        {
            Assert.Equal("JL606", Wrong(Host(i)));
        }

        Assert.Equal("JL666", Wrong(Host(TriesAMinute)));
        Assert.Equal("JL666", Try(pairing.Code, Host(9999)));
        clock.Pass(TimeSpan.FromSeconds(61));
        Assert.Null(Try(pairing.Code, Host(9999)));
    }

    private static IPAddress Host(int number) => new([10, 0, (byte)(number / 250), (byte)(1 + (number % 250))]);

    private string? Wrong(IPAddress from) => Try("0000 000x", from);

    private string? Try(string code, IPAddress from) => pairing.Pair(code, "bench tablet", from, Now).TryGet(out _, out var problems) ? null : Assert.Single(problems).Code;

    private sealed class Clock : TimeProvider
    {
        private long now;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => now;

        internal void Pass(TimeSpan time) => now += time.Ticks;
    }
}
