using JarLabel.Printing.Finding;

namespace JarLabel.Tests.Printing;

public class NetworkCallTests
{
    /// <summary>The question as the standards lay it out: header, two names as labels, PTR, the bit that asks for an answer to us alone, IN.</summary>
    [Fact, Cites(References.Rfc1035, "4.1.1, 4.1.2; RFC 6762 section 5.4")]
    public void The_question_is_written_octet_by_octet() => Assert.Equal(
        "0000" + "0000" + "0001" + "0000" + "0000" + "0000" + "04" + "5f697070" + "04" + "5f746370" + "05" + "6c6f63616c" + "00" + "000c" + "8001",
        Convert.ToHexStringLower(DnsMessage.Question(["_ipp._tcp.local"])));

    [Fact, Cites(References.Rfc1035, "4.1.4, message compression; RFC 6763 sections 4 to 6")]
    public async Task A_printer_that_answers_is_listed_with_the_address_it_gives()
    {
        using var responder = new UdpClient(new IPEndPoint(IPAddress.Loopback, 0));
        var answering = Answer(responder, Printer());
        var seen = await NetworkCall.Listen((IPEndPoint)responder.Client.LocalEndPoint!, TimeSpan.FromMilliseconds(700));
        await answering;
        Assert.Equal(new SeenPrinter("Bench Roll", "ipp://192.168.1.30:631/ipp/print/roll", "Roll 57", null, SeenHow.Network), Assert.Single(seen));
    }

    [Fact]
    public async Task Nobody_answering_is_no_printer() =>
        Assert.Empty(await NetworkCall.Listen(new IPEndPoint(IPAddress.Loopback, 9), TimeSpan.FromMilliseconds(200)));

    [Fact]
    public void Damaged_and_circular_answers_never_break_the_reader()
    {
        var random = new Random(6762);
        var good = Printer();
        for (var i = 0; i < 20_000; i++)
        {
            var bytes = good.ToArray();
            for (var damage = random.Next(1, 5); damage > 0; damage--)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            Assert.InRange(DnsMessage.Read(bytes[..random.Next(bytes.Length + 1)]).Count, 0, 100_000);
        }

        byte[] circle = [0, 0, 0x84, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0xC0, 12, 0, 12, 0, 1, 0, 0, 0, 0, 0, 2, 0xC0, 12];
        Assert.Empty(DnsMessage.Read(circle));
    }

    private static async Task Answer(UdpClient responder, byte[] message)
    {
        var asked = await responder.ReceiveAsync(TestContext.Current.CancellationToken);
        await responder.SendAsync(message, asked.RemoteEndPoint, TestContext.Current.CancellationToken);
    }

    /// <summary>PTR, SRV, TXT and A of one printer, names shortened by pointers to octet 12 (the service) as responders do.</summary>
    private static byte[] Printer()
    {
        byte[] instance = [10, .. "Bench Roll"u8, 0xC0, 12];
        byte[] words = [17, .. "rp=ipp/print/roll"u8, 10, .. "ty=Roll 57"u8];
        byte[] host = [5, .. "bench"u8, 5, .. "local"u8, 0];
        return
        [
            0, 0, 0x84, 0, 0, 0, 0, 1, 0, 0, 0, 3,
            4, .. "_ipp"u8, 4, .. "_tcp"u8, 5, .. "local"u8, 0, 0, 12, 0, 1, 0, 0, 0, 120, .. Sized(instance),
            .. instance, 0, 33, 0x80, 1, 0, 0, 0, 120, .. Sized([0, 0, 0, 0, 2, 0x77, .. host]),
            .. instance, 0, 16, 0x80, 1, 0, 0, 0, 120, .. Sized(words),
            .. host, 0, 1, 0x80, 1, 0, 0, 0, 120, .. Sized([192, 168, 1, 30]),
        ];
    }

    private static byte[] Sized(byte[] bytes) => [0, (byte)bytes.Length, .. bytes];
}
