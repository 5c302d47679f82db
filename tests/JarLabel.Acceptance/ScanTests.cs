namespace JarLabel.Acceptance;

public sealed class ScanTests : IDisposable
{
    private readonly Shop shop = new();

    public ScanTests() => Assert.Equal(0, shop.Run("shop", "set", "base-url", "http://192.168.1.20:5080").ExitCode);

    public void Dispose() => shop.Dispose();

    [Fact]
    public void A_printed_label_leads_back_to_its_jar()
    {
        var file = Mixed();
        var page = Path.Combine(shop.Folder, "photo");
        OutsideProgram.PdfToPpm.Run("-r", "200", "-jpeg", "-singlefile", file, page);
        var answer = shop.Json("scan", page + ".jpg");
        Assert.Equal(1, answer["jar"]!["number"]!.GetValue<int>());
        Assert.Equal("HTTP://192.168.1.20:5080/J/1-9.1", answer["scanned"]!["payload"]!.GetValue<string>());
        Assert.False(answer["scanned"]!["outOfDate"]!.GetValue<bool>());
    }

    [Fact]
    public void A_label_older_than_its_jar_is_told_with_the_command_that_reprints_it()
    {
        Mixed();
        shop.Json("thin", "1", "--to", "1");
        var answer = shop.Json("scan", "HTTP://192.168.1.20:5080/J/1-9.1");
        Assert.True(answer["scanned"]!["outOfDate"]!.GetValue<bool>());
        Assert.Contains(answer["warnings"]!.AsArray(), w => w!["message"]!.GetValue<string>().Contains("jarlabel label 1", StringComparison.Ordinal));
        Assert.False(shop.Json("scan", "JAR 1-9.2")["scanned"]!["outOfDate"]!.GetValue<bool>());
    }

    [Fact]
    public void A_typed_number_shows_the_jar() => Assert.Equal(1, After(Mixed(), shop.Json("scan", "1-9"))["jar"]!["number"]!.GetValue<int>());

    [Theory]
    [InlineData("HTTP://10.0.0.7:5080/J/1-9.1", "JL185")]
    [InlineData("HTTP://192.168.1.20:5080/J/1-8.1", "JL184")]
    [InlineData("https://example.org/flyer", "JL184")]
    [InlineData("1-8", "JL142")]
    [InlineData("7", "JL143")]
    [InlineData("nowhere.jpg", "JL188")]
    public void A_foreign_damaged_or_unknown_code_is_told(string what, string code)
    {
        Mixed();
        var run = shop.Run("scan", what);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_scanner_types_one_code_a_line()
    {
        Mixed();
        Mixed();
        using var process = shop.Start("scan", "-", "--json");
        process.StandardInput.Write("HTTP://192.168.1.20:5080/J/1-9.1\r\n\n2-7\n");
        process.StandardInput.Close();
        var answer = JsonNode.Parse(process.StandardOutput.ReadToEnd())!;
        process.WaitForExit();
        Assert.Equal([1, 2], answer["jars"]!.AsArray().Select(j => j!["jar"]!["number"]!.GetValue<int>()));
    }

    private static JsonObject After(string file, JsonObject answer) => File.Exists(file) ? answer : throw new FileNotFoundException(file);

    private string Mixed() => shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "300 mL", "--solvent", "ethanol-95")["label"]!["file"]!.GetValue<string>();
}
