namespace JarLabel.Tests.Printing;

public class IppMessageTests
{
    /// <summary>The Print-Job request of the appendix, octet by octet: charset, language, address, name, fidelity, copies 20, both sides.</summary>
    private const string PrintJobRequest =
        "0101" + "0002" + "00000001" + "01"
        + "47" + "0012" + "617474726962757465732d63686172736574" + "0005" + "7574662d38"
        + "48" + "001b" + "617474726962757465732d6e61747572616c2d6c616e6775616765" + "0005" + "656e2d7573"
        + "45" + "000b" + "7072696e7465722d757269" + "002c" + "6970703a2f2f7072696e7465722e6578616d706c652e636f6d2f6970702f7072696e742f70696e6574726565"
        + "42" + "0008" + "6a6f622d6e616d65" + "0006" + "666f6f626172"
        + "22" + "0016" + "6970702d6174747269627574652d666964656c697479" + "0001" + "01"
        + "02"
        + "21" + "0006" + "636f70696573" + "0004" + "00000014"
        + "44" + "0005" + "7369646573" + "0013" + "74776f2d73696465642d6c6f6e672d65646765"
        + "03";

    [Fact, Cites(References.Rfc8010, "appendix A.1")]
    public void The_print_job_request_of_the_standard_is_written_octet_by_octet()
    {
        var request = new IppMessage((ushort)IppOperation.PrintJob, 1,
        [
            new IppGroup(IppTag.OperationGroup,
            [
                new IppField("attributes-charset", [IppValue.Of(IppTag.Charset, "utf-8")]),
                new IppField("attributes-natural-language", [IppValue.Of(IppTag.Language, "en-us")]),
                new IppField("printer-uri", [IppValue.Of(IppTag.Uri, "ipp://printer.example.com/ipp/print/pinetree")]),
                new IppField("job-name", [IppValue.Of(IppTag.Name, "foobar")]),
                new IppField("ipp-attribute-fidelity", [IppValue.Of(true)]),
            ]),
            new IppGroup(IppTag.JobGroup,
            [
                new IppField("copies", [IppValue.Of(20)]),
                new IppField("sides", [IppValue.Keyword("two-sided-long-edge")]),
            ]),
        ]);
        Assert.Equal(PrintJobRequest, Convert.ToHexStringLower(IppWriter.Bytes(request)));
    }

    [Fact, Cites(References.Rfc8010, "appendix A.1")]
    public void The_print_job_request_of_the_standard_is_read()
    {
        byte[] bytes = [.. Convert.FromHexString(PrintJobRequest), .. "%!PDF"u8];
        var message = IppReader.Read(bytes, out var end)!;
        Assert.Equal((2, 1), (message.Code, message.RequestId));
        Assert.Equal("%!PDF", Encoding.ASCII.GetString(bytes[end..]));
        var operation = message.First(IppTag.OperationGroup);
        Assert.Equal(("utf-8", "foobar"), (operation.Word("attributes-charset"), operation.Word("job-name")));
        Assert.True(operation.First("ipp-attribute-fidelity")!.Flag);
        Assert.Equal(20, message.First(IppTag.JobGroup).Number("copies"));
    }

    [Fact, Cites(References.Rfc8010, "appendix A.5, Get-Jobs request: several values")]
    public void Several_values_of_one_name_are_written_with_an_empty_name()
    {
        var bytes = IppWriter.Bytes(new IppMessage((ushort)IppOperation.GetJobs, 0x7b,
            [new IppGroup(IppTag.OperationGroup, [new IppField("requested-attributes", [IppValue.Keyword("job-id"), IppValue.Keyword("job-name")])])]));
        Assert.Equal(
            "0101" + "000a" + "0000007b" + "01" + "44" + "0014" + "7265717565737465642d61747472696275746573" + "0006" + "6a6f622d6964" + "44" + "0000" + "0008" + "6a6f622d6e616d65" + "03",
            Convert.ToHexStringLower(bytes));
        Assert.Equal(["job-id", "job-name"], IppReader.Read(bytes, out _)!.First(IppTag.OperationGroup).Words("requested-attributes"));
    }

    /// <summary>begCollection, memberAttrName, value, ..., endCollection, nested: the rule of section 3.1.6, its octets laid out by hand.</summary>
    [Fact, Cites(References.Rfc8010, "3.1.6")]
    public void Paper_is_written_as_a_collection_in_a_collection()
    {
        var bytes = IppWriter.Bytes(new IppMessage(2, 1, [new IppGroup(IppTag.JobGroup, [new IppField("media-col", [IppValue.Collection(
            new IppField("media-size", [IppValue.Collection(new IppField("x-dimension", [IppValue.Of(5700)]), new IppField("y-dimension", [IppValue.Of(3200)]))]))])])]));
        Assert.Equal(
            "0101" + "0002" + "00000001" + "02"
            + "34" + "0009" + "6d656469612d636f6c" + "0000"
            + "4a" + "0000" + "000a" + "6d656469612d73697a65"
            + "34" + "0000" + "0000"
            + "4a" + "0000" + "000b" + "782d64696d656e73696f6e" + "21" + "0000" + "0004" + "00001644"
            + "4a" + "0000" + "000b" + "792d64696d656e73696f6e" + "21" + "0000" + "0004" + "00000c80"
            + "37" + "0000" + "0000"
            + "37" + "0000" + "0000"
            + "03",
            Convert.ToHexStringLower(bytes));
        var size = IppReader.Read(bytes, out _)!.First(IppTag.JobGroup).First("media-col")!.Members!.First("media-size")!.Members!;
        Assert.Equal((5700, 3200), (size.Number("x-dimension"), size.Number("y-dimension")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("0101")]
    [InlineData("0901000000000001" + "03")]
    [InlineData("0101000000000001" + "01")]
    [InlineData("0101000000000001" + "01" + "47ffff")]
    [InlineData("0101000000000001" + "21" + "03")]
    [InlineData("0101000000000001" + "01" + "4400000001" + "41" + "03")]
    [InlineData("0101000000000001" + "02" + "34000161" + "0000" + "03")]
    [InlineData("485454502f312e3120343034")]
    public void Bytes_that_are_no_message_are_refused(string hex) => Assert.Null(IppReader.Read(Convert.FromHexString(hex), out _));

    [Fact]
    public void Collections_nested_without_end_are_refused()
    {
        byte[] bytes = [1, 1, 0, 0, 0, 0, 0, 1, 2, 0x34, 0, 1, 0x61, 0, 0, .. Enumerable.Repeat<byte[]>([0x4A, 0, 0, 0, 1, 0x61, 0x34, 0, 0, 0, 0], 5000).SelectMany(b => b)];
        Assert.Null(IppReader.Read(bytes, out _));
    }

    [Fact]
    public void Random_bytes_and_damaged_messages_never_break_the_reader()
    {
        var random = new Random(8010);
        var good = Convert.FromHexString(PrintJobRequest);
        for (var i = 0; i < 20_000; i++)
        {
            var bytes = good.ToArray();
            for (var damage = random.Next(1, 6); damage > 0; damage--)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            var message = IppReader.Read(bytes[..random.Next(bytes.Length + 1)], out var end);
            Assert.InRange(end, 0, bytes.Length);
            message?.Groups.ToList().ForEach(g => g.Attributes.ToList().ForEach(a => g.Words(a.Name)));
        }
    }
}
