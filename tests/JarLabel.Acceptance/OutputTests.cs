namespace JarLabel.Acceptance;

/// <summary>Answers that go to a file, to a pipe, or nowhere.</summary>
public sealed class OutputTests : IDisposable
{
    private readonly Shop shop = new();

    public OutputTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "a shell and /dev/full are wanted");

    public void Dispose() => shop.Dispose();

    [Fact]
    public void Answers_into_one_file_stand_one_after_the_other()
    {
        Assert.Equal((0, ""), Shell("\"$0\" shelf > told; \"$0\" shelf >> told; (\"$0\" shelf; \"$0\" brew; \"$0\" shelf) >> told 2>&1; \"$0\" shelf >> told"));
        var told = File.ReadAllText(Path.Combine(shop.Folder, "told"));
        var once = shop.Run("shelf").Result;
        Assert.Equal(once + once + once + shop.Run("brew").Errors + once + once, told);
    }

    [Fact]
    public void A_reader_that_has_gone_is_no_fault() => Assert.Equal((0, ""), Shell("\"$0\" shelf | true; \"$0\" calc mix --cut 1 --pour \"1 L\" --solvent ethanol-95 | head -1 > /dev/null"));

    [Fact]
    public void An_answer_that_cannot_be_written_is_told_and_what_was_done_stays_done()
    {
        var (code, errors) = Shell("\"$0\" mix --grade garnet --cut 1.5 --pour \"350 mL\" --solvent ethanol-95 --container \"500 mL\" > /dev/full");
        Assert.Equal(2, code);
        Assert.StartsWith("error JL183", errors, StringComparison.Ordinal);
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("mix --help")]
    [InlineData("--version")]
    public void Help_that_cannot_be_written_is_told_in_the_same_way(string line)
    {
        var (code, errors) = Shell($"\"$0\" {line} > /dev/full");
        Assert.Equal(2, code);
        Assert.StartsWith("error JL183", errors, StringComparison.Ordinal);
        Assert.Equal((0, ""), Shell($"\"$0\" {line} | true"));
    }

    [Fact]
    public void Errors_that_cannot_be_written_end_the_program_as_they_should()
    {
        Assert.Equal((2, ""), Shell("\"$0\" brew 2> /dev/full"));
        Assert.Equal((2, ""), Shell("\"$0\" shelf > /dev/full 2>&1"));
    }

    private (int Code, string Errors) Shell(string script)
    {
        using var shell = shop.StartUnder("sh", "-c", script, Place.Program);
        var errors = shell.StandardError.ReadToEnd();
        shell.WaitForExit();
        return (shell.ExitCode, errors);
    }
}
