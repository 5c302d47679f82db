namespace JarLabel.Tests.Labels;

public class LabelCodeTests
{
    [Theory]
    [InlineData("HTTP://192.168.1.20:5080/J/142-5.1", 142, 1)]
    [InlineData("http://192.168.1.20:5080/j/142-5.12", 142, 12)]
    [InlineData("SHELLAC 1.5 LB GARNET. MIXED 2026-03-09. USE BY 2026-11-09. DANGER FLAMMABLE. JAR 142-5.1", 142, 1)]
    [InlineData("  jar 142-5.3\r\n", 142, 3)]
    public void A_code_of_ours_leads_to_its_jar_and_revision(string payload, int jar, int revision)
    {
        var code = LabelCode.Read(payload);
        Assert.NotNull(code);
        Assert.Equal((jar, revision), (code.Jar.Value, code.Revision));
    }

    [Theory]
    [InlineData("HTTP://192.168.1.20:5080/J/142-6.1")]
    [InlineData("HTTP://192.168.1.20:5080/J/142.1")]
    [InlineData("https://example.org/")]
    [InlineData("AJAR 142-5.1")]
    [InlineData("JAR 142-5.1 AND MORE")]
    [InlineData("")]
    public void A_damaged_or_foreign_code_is_none_of_ours(string payload) => Assert.Null(LabelCode.Read(payload));
}
