namespace JarLabel.Acceptance;

/// <summary>Lines as a newcomer types them. A blank in a value is written <c>_</c>; several lines are parted by <c>;</c>.</summary>
public sealed class NaturalTypingTests : IDisposable
{
    private const string Batch = "mix --cut 2 --pour 600_mL --solvent ethanol-95 --container 1_L --no-label --at 2026-03-02_10:00";

    private readonly Shop shop = new();

    public NaturalTypingTests()
    {
        Run($"{Batch} --grade garnet; {Batch} --grade blonde; shop set shelf cellar=14_C --at 2026-03-02_11:00");
    }

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("mix garnet --solvent ethanol-95 --cut 1.5 --pour 8_fl_oz --container 1_pt")]
    [InlineData("mix garnet_dewaxed --solvent denatured_alcohol --cut 1.5 --pour 5_gals --no-label")]
    [InlineData("thin 1 1.5 --container 1_L")]
    [InlineData("thicken 1 2.5 --container 1_L")]
    [InlineData("move 1 cellar")]
    [InlineData("shelf main")]
    [InlineData("test 1 passed --at 2026-03-20")]
    [InlineData("use 1 half")]
    [InlineData("use 1 40%")]
    [InlineData("use 1 half_a_cup")]
    [InlineData("use 1 half_cup")]
    [InlineData("use 1 quarter_cup")]
    [InlineData("use 1 two_thirds")]
    [InlineData("decant 1 three_quarters")]
    [InlineData("decant 1 --into 3_x_200_mL")]
    [InlineData("decant 1 200mL")]
    [InlineData("decant 1 half")]
    [InlineData("decant 1 200_mL,25%")]
    [InlineData("notice cellar")]
    [InlineData("shop set shelf attic_30_C")]
    [InlineData("bottle add --solvent ethanol-95 --volume 1_L")]
    [InlineData("blend 1=all 2=half --container 2_L")]
    [InlineData("calc coverage --cut 2 --coats 3 --area 30_x_20_in")]
    [InlineData("calc air --solvent ethanol-95 --evaporate 250_mL --room 20_x_15_x_9_ft")]
    [InlineData("plan --for pad --area 30_x_20_in --coats 8 --grade garnet --solvent ethanol-95")]
    [InlineData("shelf --at yesterday")]
    [InlineData("shelf --at 2026-03-04_14:30")]
    [InlineData("calc mix --solvent ethanol-95 --cut 2 --makes 5_gals")]
    [InlineData("bag add --grade garnet --mass 500_g --date yesterday")]
    [InlineData("grades")]
    [InlineData("--units metric shelf main")]
    [InlineData("--json --at 2026-03-04 --dry-run thin 1 1.5 --container 1_L")]
    [InlineData("solvents")]
    public void What_people_mean_is_done(string line)
    {
        var told = Run(line.Contains("--at", StringComparison.Ordinal) || line.Contains("yesterday", StringComparison.Ordinal) ? line : line + " --at 2026-03-04");
        Assert.Equal("", string.Join('\n', told.Errors.Split('\n').Where(said => said.StartsWith("error", StringComparison.Ordinal))));
        Assert.Equal(0, told.ExitCode);
    }

    [Theory]
    [InlineData("mix garnet --cut 2 lb --pour 8 fl oz", "put it in quotes: jarlabel mix garnet --cut \"2 lb\" --pour \"8 fl oz\"")]
    [InlineData("mix --cut 2 lb garnet --solvent ethanol-95", "put it in quotes: jarlabel mix --cut \"2 lb\" garnet --solvent ethanol-95")]
    [InlineData("mix --job viola top --grade garnet", "put it in quotes: jarlabel mix --job \"viola top\" --grade garnet")]
    [InlineData("use 1 100 mL", "put it in quotes: jarlabel use 1 \"100 mL\"")]
    [InlineData("use 1 half pint", "put it in quotes: jarlabel use 1 \"half pint\"")]
    [InlineData("use 1 half a pint", "put it in quotes: jarlabel use 1 \"half a pint\"")]
    [InlineData("use 1 two thirds", "put it in quotes: jarlabel use 1 \"two thirds\"")]
    [InlineData("decant 1 200 mL", "put it in quotes: jarlabel decant 1 \"200 mL\"")]
    [InlineData("shop set shelf main 30 C", "put it in quotes: jarlabel shop set shelf \"main 30 C\"")]
    [InlineData("use 2 half viola", "Unrecognized command or argument \"viola\".")]
    [InlineData("note 1 strained twice", "put it in quotes: jarlabel note 1 \"strained twice\"")]
    [InlineData("move 1 top shelf", "put it in quotes: jarlabel move 1 \"top shelf\"")]
    [InlineData("blend 1=200 mL 2", "put it in quotes: jarlabel blend \"1=200 mL\" 2")]
    [InlineData("calc blend --jar 200 mL@2 --jar 100_mL@1", "put it in quotes: jarlabel calc blend --jar \"200 mL@2\" --jar \"100 mL@1\"")]
    [InlineData("test 1 pass --temp 20 C", "put it in quotes: jarlabel test 1 pass --temp \"20 C\"")]
    [InlineData("mix --grdae garnet", "Unrecognized command or argument \"--grdae\". Did you mean \"--grade\"?")]
    [InlineData("bag add --grade garnet --weight 500_g", "Unrecognized command or argument \"--weight\". Did you mean \"--mass\"?")]
    [InlineData("bag add --grade garnet --flakes 500_g", "Unrecognized command or argument \"--flakes\". Did you mean \"--mass\"?")]
    [InlineData("mix garnet --cut 2 --weight 50_g", "Unrecognized command or argument \"--weight\". Did you mean \"--flakes\"?")]
    [InlineData("mix garnet --cut 2 --alcohol ethanol-95", "Unrecognized command or argument \"--alcohol\". Did you mean \"--solvent\"?")]
    [InlineData("bottle add --solvent ethanol-95 --amount 1_L", "Unrecognized command or argument \"--amount\". Did you mean \"--volume\"?")]
    [InlineData("shelf --deu", "Unrecognized command or argument \"--deu\". Did you mean \"--due\"?")]
    [InlineData("thin", "JAR and --to are missing. A whole line is \"jarlabel thin 142 --to 1\".")]
    [InlineData("use 1", "VOLUME is missing. A whole line is jarlabel use 142 \"100 mL\".")]
    [InlineData("mix --cut", "--cut needs a value; for example --cut 1.5.")]
    [InlineData("thin 1 1.5 --to 1", "Read \"1\" and \"1.5\" for --to; give it once.")]
    public void A_line_that_cannot_be_read_is_told_once_and_as_it_was_meant(string line, string says)
    {
        var told = Run(line);
        Assert.Equal(2, told.ExitCode);
        Assert.StartsWith("error JL107: ", told.Errors, StringComparison.Ordinal);
        Assert.Contains(says, told.Errors, StringComparison.Ordinal);
        Assert.Single(told.Errors.Trim().Split('\n'));
    }

    [Theory]
    [InlineData("use 1 hlaf", "Read \"hlaf\" as how much; wanted is a volume such as \"100 mL\", a part such as half, a third, a quarter or 40 %, or all. Did you mean \"half\"?")]
    [InlineData("use 1 120%", "a number from 0.1 to 100 is wanted")]
    [InlineData("move 1 celler", "this shop has: main, cellar. Did you mean \"cellar\"?")]
    [InlineData("thin 1 0.5 --container 700_mL", "jarlabel decant 1 --into")]
    public void A_value_that_cannot_be_meant_is_told_with_what_could_be(string line, string says)
    {
        var run = Run(line);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("jar 5-1", "JL143", "\"jarlabel shelf\" lists those there are")]
    [InlineData("shelf --at 3/4/2026", "JL109", "year-month-day")]
    [InlineData("use 1 1.000_ml", "JL104", "Write 1000 ml or 1 ml")]
    [InlineData("calc mix --solvent ethanol-95 --cut 2 --flakes 1.000_g", "JL104", "Write 1000 g or 1 g")]
    [InlineData("decant 1 --into 200_mL_300_mL", "JL475", "part them by commas")]
    [InlineData("shop set aging 2%", "JL110", "not a percentage")]
    [InlineData("mix garnet --solvent ethanol --cut 2 --pour 100_mL", "JL201", "ethanol-95, ethanol-96, ethanol-99, ethanol-absolute: write which")]
    [InlineData("card 1 --sheet letter-2x5-101.6x50.8", "JL477", "card stock: card-101.6x152.4, card-a6")]
    [InlineData("calc air --solvent ethanol-95 --evaporate 250_mL --room 20_x_15_ft", "JL476", "length by width by height")]
    public void What_cannot_be_done_is_told_with_what_can(string line, string code, string says)
    {
        var told = Run(line);
        Assert.Equal(2, told.ExitCode);
        Assert.Contains($"error {code}: ", told.Errors, StringComparison.Ordinal);
        Assert.Contains(says, told.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("--design", told.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Bare_mix_tells_all_that_is_missing_and_one_whole_line_that_works()
    {
        var told = Run("mix");
        Assert.Equal(2, told.ExitCode);
        Assert.All((string[])["--grade", "--solvent", "--cut"], name => Assert.Contains($": {name}: ", told.Errors, StringComparison.Ordinal));
        Assert.Contains("A whole line is jarlabel mix --grade garnet --solvent ethanol-95 --cut 1.5 --pour \"350 mL\" --container \"500 mL\".", told.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void The_distance_that_is_proposed_for_a_notice_is_taken()
    {
        var told = Run("notice --distance 50").Errors;
        var proposed = told[(told.IndexOf("--distance ", StringComparison.Ordinal) + 11)..].Split(',')[0];
        Assert.Equal(0, shop.Run("notice", "--distance", proposed).ExitCode);
    }

    [Fact]
    public void Each_new_jar_says_where_its_label_is_printed() =>
        Assert.Contains("letter-2x5-101.6x50.8, place 2", Run("decant 1 --into 2_x_100_mL --at 2026-03-04").Result, StringComparison.Ordinal);

    private Run Run(string lines)
    {
        Run? told = null;
        foreach (var line in lines.Split(';', StringSplitOptions.TrimEntries))
        {
            told = shop.Run([.. line.Split(' ').Select(word => word.Replace('_', ' '))]);
        }

        return told!;
    }
}
