namespace JarLabel.Tests.Mixing;

public partial class ContainerFitTests
{
    private static readonly Density Ethanol = Density.FromKilogramsPerCubicMeter(811);

    [Fact]
    public void The_largest_batch_that_is_named_fits_when_it_is_typed_as_it_stands() =>
        Gen.Select(Gen.Int[250, 1000], Gen.Double[0.5, 3]).Sample((milliliters, pounds) =>
        {
            var (container, cut) = (Volume.FromMilliliters(milliliters), PoundCut.FromPoundsPerUsGallon(Math.Round(pounds, 2)));
            var said = Said().Match(Refused(container, cut));
            foreach (var pour in (string[])[said.Groups[1].Value, said.Groups[2].Value])
            {
                Fits(new BatchRequest(cut, Pour: VolumeText.Read(pour, "pour").Require()), container);
                foreach (var flakes in (string[])[said.Groups[3].Value, said.Groups[4].Value])
                {
                    Fits(new BatchRequest(null, Pour: VolumeText.Read(pour, "pour").Require(), Flakes: MassText.Read(flakes, "flakes").Require()), container);
                }
            }

            Fits(new BatchRequest(cut, Fill: VolumeText.Read(said.Groups[5].Value, "fill").Require()), container);
        });

    /// <summary>570 mL fit; of a 2 lb cut 1/1.1986 of it is poured, 475.6 mL, which is no 476.</summary>
    [Fact]
    public void What_fits_is_named_rounded_down() =>
        Assert.Contains("pour 475 mL (16 fl oz)", Refused(Volume.FromMilliliters(600), PoundCut.FromPoundsPerUsGallon(2)), StringComparison.Ordinal);

    private static string Refused(Volume container, PoundCut cut) =>
        Assert.Single(ContainerFit.Check(Recipe(new BatchRequest(cut, Pour: container)), container).Problems).Message;

    private static void Fits(BatchRequest request, Volume container) => Assert.True(ContainerFit.Check(Recipe(request), container).Ok, $"{request} in {container}");

    private static Recipe Recipe(BatchRequest request) => RecipeSolver.Solve(request, Ethanol).Require();

    [GeneratedRegex("pour ([^(]+) \\(([^)]+)\\), then ([^(]+) \\(([^)]+)\\) of flakes; or give .*?(?<![0-9.])([0-9.]+ m?L)")]
    private static partial Regex Said();
}
