namespace JarLabel.Acceptance;

/// <summary>What is typed is taken as it is typed.</summary>
public sealed class TypedLineTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>A word that begins with @ names no file to read words from: somebody's note is not a file's contents.</summary>
    [Theory]
    [InlineData("@Anna will call")]
    [InlineData("@words.txt")]
    public void A_note_may_begin_with_any_sign(string note)
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        var file = Path.Combine(shop.Folder, "words.txt");
        File.WriteAllText(file, "something that nobody typed");
        var said = note == "@words.txt" ? "@" + file : note;
        Assert.Equal(0, shop.Run("note", "1", said).ExitCode);
        Assert.Equal(said, shop.Json("jar", "1")["history"]!.AsArray()[^1]!["text"]!.GetValue<string>());
    }

    [Fact]
    public void Help_begins_somewhere_and_leads_to_commands_and_topics()
    {
        var bare = shop.Run();
        Assert.Equal(0, bare.ExitCode);
        Assert.Equal(bare.Result, shop.Run("help").Result);
        Assert.Contains("jarlabel mix --grade garnet", bare.Result, StringComparison.Ordinal);
        Assert.Equal(shop.Run("bag", "add", "--help").Result, shop.Run("help", "bag", "add").Result);
        foreach (var topic in (string[])["amounts", "files", "layouts", "lists", "phone", "printing", "safety", "sources"])
        {
            var told = shop.Run("help", topic);
            Assert.Equal(0, told.ExitCode);
            Assert.InRange(told.Result.Split('\n').Length, 5, 120);
            Assert.Equal(topic, shop.Json("help", topic)["topic"]!.GetValue<string>());
        }

        var none = shop.Run("help", "amonts");
        Assert.Equal(2, none.ExitCode);
        Assert.Contains("Did you mean \"amounts\"?", none.Errors, StringComparison.Ordinal);
    }
}
