namespace JarLabel.Tests.Layout.Codes;

public class QrEncoderTests
{
    // Annex I of the standard shows another mask than ours; the codewords are the same whatever the mask.
    [Fact, Cites(References.Iso18004, "Annex I")]
    public void The_standard_s_example_gives_the_standard_s_codewords()
    {
        var codewords = QrCodewords.Of(QrEncoder.Encode("01234567"));
        Assert.Equal(
            "10 20 0C 56 61 80 EC 11 EC 11 EC 11 EC 11 EC 11 A5 24 D4 C1 ED 36 C7 87 2C 55",
            string.Join(' ', codewords.Select(codeword => codeword.ToString("X2", null))));
    }

    // Table 7 of the standard: version 2-M holds 38 alphanumeric characters, 1-M 20, 3-M 61; in byte mode 2-M holds 26. Sides from table 1. Both tables from memory.
    [Theory, Cites(References.Iso18004, "tables 1 and 7")]
    [InlineData("HTTP://192.168.1.20:5080/J/142-5.1", 25)]
    [InlineData("12345678901234567890", 21)]
    [InlineData("ABCDEFGHIJ0123456789ABCDEFGHIJ01234567", 25)]
    [InlineData("ABCDEFGHIJ0123456789ABCDEFGHIJ012345678", 29)]
    [InlineData("http://192.168.1.20:5080/j/142-5.1", 29)]
    public void A_payload_takes_the_smallest_code_of_its_mode(string payload, int side) =>
        Assert.Equal(side, QrEncoder.Encode(payload).Size);

    // Format information: the first two of its 15 bits, after taking off the mask 101010000010010, are 00 for level M. From memory.
    [Theory, Cites(References.Iso18004, "Annex C")]
    [InlineData("01234567")]
    [InlineData("HTTP://192.168.1.20:5080/J/10488-3.12")]
    public void The_level_is_M(string payload)
    {
        var modules = QrEncoder.Encode(payload);
        Assert.Equal((false, false), (modules[8, 0] ^ true, modules[8, 1] ^ false));
    }
}
