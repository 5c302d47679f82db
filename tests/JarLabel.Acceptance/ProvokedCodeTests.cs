namespace JarLabel.Acceptance;

/// <summary>Codes that no other test provokes, each by the line that a person would type. Several lines are parted by <c>;</c>, the last one is told of.</summary>
public sealed class ProvokedCodeTests : IDisposable
{
    private const string Batch = "mix --cut 1.5 --pour 350_mL --solvent ethanol-95 --no-label";

    private readonly Shop shop = new();

    public ProvokedCodeTests()
    {
        Run($"{Batch} --grade garnet --at 2026-03-09T10:00");
        Run("bag add --grade garnet --mass 500_g --date 2026-01-05 --no-label --at 2026-03-09T10:00");
        File.WriteAllText(Path.Combine(shop.Folder, "class.csv"), "grade,cut,pour,solvent\ngarnet,1.5,350 mL,\n");
    }

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("JL113", "calc blend --jar 200_mL --jar 100_mL@1")]
    [InlineData("JL114", "calc solids --solvent ethanol-95")]
    [InlineData("JL114", "calc solids --solvent ethanol-95 --cut 2 --percent 20")]
    [InlineData("JL116", "shop set shelf cellar")]
    [InlineData("JL123", "calc coverage --cut 2 --area 14_sq_ft --coats 3 --spread far")]
    [InlineData("JL125", "test 1 pass --at 2026-03-08")]
    [InlineData("JL127", "plan --for pad --grade garnet --solvent ethanol-95")]
    [InlineData("JL129", "plan --grade garnet --solvent ethanol-95")]
    [InlineData("JL137", "calc blend --jar 200_mL@2")]
    [InlineData("JL169", "shop set printer bench")]
    [InlineData("JL196", "mix --list class.csv --cut 2")]
    [InlineData("JL197", "label --bag 1 --copies 2")]
    [InlineData("JL198", Batch + " --grade garnet --copies 2")]
    [InlineData("JL334", "shop set shelf attic=20_C; label --shelf attic")]
    [InlineData("JL337", "use 1 all --at 2026-03-12; label 1 2")]
    [InlineData("JL348", "mix --list class.csv")]
    [InlineData("JL484", Batch + " --bag 1 --at 2026-01-04")]
    [InlineData("JL503", "label 1 --to ipp://no-such-host.invalid/ipp/print --at 2026-03-12")]
    [InlineData("JL527", "label 1 --to ipp://127.0.0.1:9/ipp/print --out label.png")]
    public void A_line_that_cannot_be_done_is_refused_with_its_code(string code, string lines)
    {
        var told = Run(lines);
        Assert.Equal(2, told.ExitCode);
        Assert.Contains($"error {code}: ", told.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("JL126", "test 1 fail --at 2026-04-01; test 1 pass --at 2026-04-01 --json")]
    [InlineData("JL170", "use 1 10_mL --at 2027-06-01 --json")]
    [InlineData("JL178", "use 1 10_mL --at 2026-03-09T13:00 --json")]
    [InlineData("JL179", "use 1 10_mL --at 2026-08-01 --json")]
    [InlineData("JL190", "bag discard 1 --at 2026-03-12; scan BAG_1-9 --json")]
    [InlineData("JL398", "test 1 slow --at 2026-04-01 --json")]
    [InlineData("JL399", "bag test 1 cloudy --at 2026-03-12; " + Batch + " --bag 1 --at 2026-03-13 --json")]
    public void What_goes_through_but_should_be_known_is_told_with_its_code(string code, string lines)
    {
        var told = Run(lines);
        Assert.Equal(0, told.ExitCode);
        Assert.Contains($"\"code\":\"{code}\"", told.Result, StringComparison.Ordinal);
    }

    private Run Run(string lines)
    {
        Run? last = null;
        foreach (var line in lines.Split("; "))
        {
            last = shop.Run([.. line.Split(' ').Select(word => word == "class.csv" ? Path.Combine(shop.Folder, word) : word.Replace('_', ' '))]);
        }

        return last!;
    }
}
