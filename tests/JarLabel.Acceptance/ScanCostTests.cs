using JarLabel.Tests.Render.Pictures;

namespace JarLabel.Acceptance;

/// <summary>A picture made to cost much costs <c>scan</c> little: it ends with a problem, in time and in memory that leave room for a busy machine.</summary>
public sealed class ScanCostTests : IDisposable
{
    private const int MostMegabytes = 600;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData(1, 20_000, "JL182")]
    [InlineData(2, 100_000, "JL182")]
    [InlineData(100_000, 100, "JL182")]
    [InlineData(6_000, 6_000, "JL182")]
    [InlineData(20_000, 20_000, "JL181")]
    public void A_picture_of_any_shape_ends_with_a_problem(int width, int height, string code)
    {
        var file = Path.Combine(shop.Folder, "photo.png");
        File.WriteAllBytes(file, code == "JL181" ? PngFile.HeadOf(width, height, 8, PngFile.Colour) : PngFile.Plain(width, height, PngFile.Colour));
        var (run, megabytes) = Scan(file);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
        Assert.InRange(megabytes, 0, MostMegabytes);
    }

    [Theory]
    [InlineData("photo.heic", "JL188")]
    [InlineData("label.pdf", "JL188")]
    public void A_picture_that_is_not_there_is_told_whatever_its_kind(string file, string code) =>
        Assert.StartsWith($"error {code}: ", shop.Run("scan", file).Errors, StringComparison.Ordinal);

    [Fact]
    public void A_picture_from_a_phone_that_cannot_be_read_is_told_in_words()
    {
        var file = Path.Combine(shop.Folder, "photo.heic");
        File.WriteAllBytes(file, [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0, .. "mif1heic"u8, .. new byte[200]]);
        var run = shop.Run("scan", file);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL380: ", run.Errors, StringComparison.Ordinal);
        Assert.Empty(run.Result);
    }

    private (Run Run, double Megabytes) Scan(string file)
    {
        using var process = shop.Start("scan", file);
        process.StandardInput.Close();
        var (result, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        var (megabytes, until) = (0.0, Environment.TickCount64 + (long)Patience.TotalMilliseconds);
        while (!process.WaitForExit(5))
        {
            megabytes = Math.Max(megabytes, Megabytes(process.Id));
            if (Environment.TickCount64 > until)
            {
                process.Kill(entireProcessTree: true);
                Assert.Fail($"It did not end within {Patience.TotalSeconds} s.");
            }
        }

        process.WaitForExit();
        return (new Run(process.ExitCode, result.GetAwaiter().GetResult(), errors.GetAwaiter().GetResult()), megabytes);
    }

    // The largest so far, as Linux keeps it; elsewhere it is not asked.
    private static double Megabytes(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], CultureInfo.InvariantCulture) / 1024;
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
