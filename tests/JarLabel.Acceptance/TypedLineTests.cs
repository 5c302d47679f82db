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
}
